package keenward.core.building.placing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The choice of the fewest candidates, found by search: one, then two, and so on. A branch is left
 * when as many more of the best candidates as are still allowed could not see what lacks. Of the
 * choices of the least number the one that fits best is taken, and of those the one that sees most.
 */
public final class FewestChoice {
  private final CoverProblem problem;
  private final long mostSteps;

  /** Candidates by what they could add, most first. */
  private final int[] order;

  /** For each candidate, by its number in the problem: the patches that it sees. */
  private final int[][] patchesOf;

  private final double[] gain;
  private final int[] roomOf;
  private final double[] squareMetres;
  private final int[] seen;
  private final double[] lacking;
  private final double[] enough;

  private final int[] taken;
  private long steps;
  private List<Integer> best = List.of();
  private double bestMisfit = Double.POSITIVE_INFINITY;
  private double bestSeen;

  private FewestChoice(CoverProblem problem, int mostTaken, long mostSteps) {
    this.problem = problem;
    this.mostSteps = mostSteps;
    int candidates = problem.misfits().size();
    int patches = problem.patches().size();
    roomOf = new int[patches];
    squareMetres = new double[patches];
    seen = new int[patches];
    gain = new double[candidates];
    lacking = problem.needs().stream().mapToDouble(need -> need - 1e-6).toArray();
    enough = lacking.clone();
    taken = new int[mostTaken];
    List<List<Integer>> seenBy = new ArrayList<>();
    for (int i = 0; i < candidates; i++) {
      seenBy.add(new ArrayList<>());
    }
    for (int i = 0; i < patches; i++) {
      CoverProblem.Patch patch = problem.patches().get(i);
      roomOf[i] = patch.room();
      squareMetres[i] = patch.squareMetres();
      for (int already = 0; already < patch.already(); already++) {
        see(i);
      }
      for (int candidate : patch.seenBy()) {
        seenBy.get(candidate).add(i);
        if (patch.already() < problem.times()) {
          gain[candidate] += patch.squareMetres() / problem.times();
        }
      }
    }
    patchesOf =
        seenBy.stream()
            .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
            .toArray(int[][]::new);
    order =
        IntStream.range(0, candidates)
            .boxed()
            .sorted(Comparator.comparingDouble(candidate -> -gain[candidate]))
            .mapToInt(Integer::intValue)
            .toArray();
  }

  /**
   * What came of the search.
   *
   * @param chosen the choice, ascending; empty when none was found
   * @param atLeast that no fewer will do
   */
  public record Found(Optional<List<Integer>> chosen, int atLeast) {}

  /**
   * Searches.
   *
   * @param most the most candidates to take
   * @param mostSteps how many patches to look at for each number before giving up
   */
  public static Found search(CoverProblem problem, int most, long mostSteps) {
    for (int number = 0; number <= most; number++) {
      FewestChoice search = new FewestChoice(problem, number, mostSteps);
      boolean isComplete = search.take(0, 0, 0);
      if (!search.bestMisfitFound()) {
        if (!isComplete) {
          return new Found(Optional.empty(), number);
        }
        continue;
      }
      return new Found(Optional.of(search.best), number);
    }
    return new Found(Optional.empty(), most + 1);
  }

  private boolean bestMisfitFound() {
    return bestMisfit < Double.POSITIVE_INFINITY;
  }

  /** Takes further candidates; false when it had to give up. */
  private boolean take(int already, int from, double misfit) {
    if (already == taken.length) {
      judge(misfit);
      return steps < mostSteps;
    }
    int left = taken.length - already;
    double lacks = 0;
    for (double room : lacking) {
      lacks += Math.max(0, room);
    }
    for (int i = from; i < order.length; i++) {
      int candidate = order[i];
      if (lacks > left * gain[candidate] + 1e-9) {
        break;
      }
      double then = misfit + problem.misfits().get(candidate);
      if (then > bestMisfit) {
        continue;
      }
      taken[already] = candidate;
      steps += patchesOf[candidate].length;
      for (int patch : patchesOf[candidate]) {
        see(patch);
      }
      boolean goesOn = take(already + 1, i + 1, then);
      for (int patch : patchesOf[candidate]) {
        unsee(patch);
      }
      if (!goesOn) {
        return false;
      }
    }
    return true;
  }

  private void see(int patch) {
    if (seen[patch] < problem.times()) {
      lacking[roomOf[patch]] -= squareMetres[patch] / problem.times();
    }
    seen[patch]++;
    if (seen[patch] == problem.times()) {
      enough[roomOf[patch]] -= squareMetres[patch];
    }
  }

  private void unsee(int patch) {
    if (seen[patch] == problem.times()) {
      enough[roomOf[patch]] += squareMetres[patch];
    }
    seen[patch]--;
    if (seen[patch] < problem.times()) {
      lacking[roomOf[patch]] += squareMetres[patch] / problem.times();
    }
  }

  private void judge(double misfit) {
    double lacks = 0;
    for (double room : enough) {
      if (room > 0) {
        return;
      }
      lacks += room;
    }
    if (misfit < bestMisfit || (misfit == bestMisfit && -lacks > bestSeen)) {
      bestMisfit = misfit;
      bestSeen = -lacks;
      best = Arrays.stream(taken).sorted().boxed().toList();
    }
  }
}
