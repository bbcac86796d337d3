package keenward.usecases.suggest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import keenward.core.building.placing.CoverChooser;
import keenward.core.building.placing.CoverProblem;
import keenward.core.building.placing.FewestChoice;
import keenward.core.progress.Progress;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import org.ojalgo.optimisation.integer.IntegerStrategy;

/**
 * Chooses a few by search, which proves the choice. Where that gives up it solves an integer
 * programme: a candidate is taken or not, a patch counts as seen when enough of those that see it
 * are taken, and each room needs its share. The programme without whole numbers gives the bound.
 * One worker and limits of steps, not of time: the same plan gets the same choice on every machine.
 */
public final class ProgrammeChooser implements CoverChooser {

  private static final int MOST_SEARCHED = 4;
  private static final long MOST_PATCHES_LOOKED_AT = 100_000_000;
  private static final int MOST_NODES = 100;

  /** Of more patches the smallest are taken as seen in the programme: that keeps it a bound. */
  private static final int MOST_PATCHES = 150;

  @Override
  public Choice choose(CoverProblem problem, Progress progress) {
    String what = "choosing among " + problem.misfits().size() + " places";
    progress.check(what, 0, 3);
    FewestChoice.Found few = FewestChoice.search(problem, MOST_SEARCHED, MOST_PATCHES_LOOKED_AT);
    if (few.chosen().isPresent()) {
      return new Choice(few.chosen().get(), few.atLeast());
    }
    progress.check(what, 1, 3);
    List<Integer> greedy = greedy(problem);
    CoverProblem coarse = coarse(problem);
    int bound = Math.max(few.atLeast(), bound(coarse));
    progress.check(what, 2, 3);
    if (greedy.size() <= bound) {
      return new Choice(greedy, bound);
    }
    Optimisation.Result result = model(coarse, true).minimise();
    List<Integer> chosen = new ArrayList<>();
    if (result.getState().isFeasible()) {
      for (int i = 0; i < problem.misfits().size(); i++) {
        if (result.doubleValue(i) > 0.5) {
          chosen.add(i);
        }
      }
    }
    if (result.getState().isOptimal()) {
      bound = Math.max(bound, chosen.size());
    }
    boolean isBetter = problem.isSolvedBy(chosen) && chosen.size() <= greedy.size();
    return new Choice(isBetter ? chosen : greedy, bound);
  }

  /** The same problem with fewer patches, no harder than the problem itself. */
  private static CoverProblem coarse(CoverProblem problem) {
    List<CoverProblem.Patch> bySize = new ArrayList<>(problem.patches());
    bySize.sort(Comparator.comparingDouble(patch -> -patch.squareMetres()));
    List<CoverProblem.Patch> patches = new ArrayList<>();
    for (int i = 0; i < bySize.size(); i++) {
      CoverProblem.Patch patch = bySize.get(i);
      patches.add(
          i < MOST_PATCHES
              ? patch
              : new CoverProblem.Patch(
                  patch.room(), patch.squareMetres(), problem.times(), List.of()));
    }
    return new CoverProblem(problem.misfits(), patches, problem.needs(), problem.times());
  }

  /** No fewer than the programme without whole numbers needs, rounded up. */
  private static int bound(CoverProblem problem) {
    Optimisation.Result relaxed = model(problem, false).minimise();
    if (!relaxed.getState().isOptimal()) {
      return 1;
    }
    double dearest =
        1
            + weight(problem)
                * problem.misfits().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    return Math.max(1, (int) Math.ceil(relaxed.getValue() / dearest - 1e-6));
  }

  /** So small that the misfits of all that could be chosen stay below one device. */
  private static double weight(CoverProblem problem) {
    return 0.5 / (8 * Math.max(1, problem.needs().size()));
  }

  private static ExpressionsBasedModel model(CoverProblem problem, boolean whole) {
    ExpressionsBasedModel model = new ExpressionsBasedModel();
    model.options.iterations_abort = whole ? MOST_NODES : Integer.MAX_VALUE;
    model.options.integer(IntegerStrategy.newConfigurable().withParallelism(() -> 1));
    List<Variable> taken = new ArrayList<>();
    for (int i = 0; i < problem.misfits().size(); i++) {
      Variable variable =
          model
              .newVariable("take " + i)
              .lower(0)
              .upper(1)
              .weight(1 + weight(problem) * problem.misfits().get(i));
      variable.integer(whole);
      taken.add(variable);
    }
    double[] needs = problem.needs().stream().mapToDouble(Double::doubleValue).toArray();
    for (CoverProblem.Patch patch : problem.patches()) {
      needs[patch.room()] -= patch.already() >= problem.times() ? patch.squareMetres() : 0;
    }
    List<Expression> rooms = new ArrayList<>();
    for (int i = 0; i < needs.length; i++) {
      rooms.add(model.newExpression("room " + i).lower(needs[i] - 1e-7));
    }
    for (int i = 0; i < problem.patches().size(); i++) {
      CoverProblem.Patch patch = problem.patches().get(i);
      if (patch.already() >= problem.times()) {
        continue;
      }
      Variable seen = model.newVariable("see " + i).lower(0).upper(1);
      // Seen once is seen wholly as soon as one is taken; seen twice must not count by halves.
      seen.integer(whole && problem.times() > 1);
      rooms.get(patch.room()).set(seen, patch.squareMetres());
      Expression often = model.newExpression("often " + i).lower(-patch.already());
      often.set(seen, -problem.times());
      patch.seenBy().forEach(candidate -> often.set(taken.get(candidate), 1));
    }
    return model;
  }

  /** The one that adds most, again and again; then those that are not needed are given back. */
  private static List<Integer> greedy(CoverProblem problem) {
    List<Integer> chosen = new ArrayList<>();
    while (!problem.isSolvedBy(chosen)) {
      int best = -1;
      double most = -1;
      for (int i = 0; i < problem.misfits().size(); i++) {
        if (!chosen.contains(i)) {
          double gain = gain(problem, chosen, i) - 1e-3 * problem.misfits().get(i);
          if (gain > most) {
            most = gain;
            best = i;
          }
        }
      }
      if (best < 0) {
        throw new IllegalStateException("all candidates together do not see enough");
      }
      chosen.add(best);
    }
    for (Integer each : List.copyOf(chosen)) {
      List<Integer> without = chosen.stream().filter(other -> !other.equals(each)).toList();
      if (problem.isSolvedBy(without)) {
        chosen = new ArrayList<>(without);
      }
    }
    chosen.sort(null);
    return chosen;
  }

  /** How much nearer every room comes to what it needs, patches that are seen in part included. */
  private static double gain(CoverProblem problem, List<Integer> chosen, int candidate) {
    double gain = 0;
    for (CoverProblem.Patch patch : problem.patches()) {
      if (patch.seenBy().contains(candidate)) {
        long before = patch.already() + patch.seenBy().stream().filter(chosen::contains).count();
        if (before < problem.times()) {
          gain += patch.squareMetres() / problem.times();
        }
      }
    }
    return gain;
  }
}
