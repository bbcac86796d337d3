package keenward.core.electrical.loop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Whether a panel tells the states of a loop apart.
 *
 * @param steps between each state and the next
 * @param longestMetres how long its cable may be at most; empty when the plan does not give the
 *     conductor, or when no length will do
 */
public record LoopCheck(List<Step> steps, Optional<Double> longestMetres) {

  /** No loop is longer; a bound for the search. */
  private static final double MOST_METRES = 20_000;

  public LoopCheck {
    steps = List.copyOf(steps);
  }

  /**
   * From one state to the next.
   *
   * @param lower the state that reads less
   * @param upper the state that reads more
   * @param thresholdOhms where the panel changes its mind
   * @param spareShare by what share of the threshold the nearer of the two stays clear of it;
   *     negative when it does not
   */
  public record Step(LoopState lower, LoopState upper, double thresholdOhms, double spareShare) {

    /** Whether the panel tells the two apart at the worst corners. */
    public boolean holds() {
      return spareShare > 0;
    }

    /** In words. */
    public String words() {
      return lower.words()
          + " and "
          + upper.words()
          + " at "
          + FaultFinder.ohms(thresholdOhms)
          + ": "
          + (holds()
              ? (int) Math.floor(100 * spareShare) + " % to spare"
              : "not told apart at the worst corner");
    }
  }

  /** Whether all states are told apart. */
  public boolean holds() {
    return steps.stream().allMatch(Step::holds);
  }

  /**
   * The check of a loop.
   *
   * @param thresholdsOhms of the panel for its wiring, rising; one fewer than it has states
   */
  public static Optional<LoopCheck> of(Loop loop, List<Double> thresholdsOhms) {
    List<Step> steps = steps(loop.bands(), thresholdsOhms);
    return steps.isEmpty()
        ? Optional.empty()
        : Optional.of(new LoopCheck(steps, longest(loop, thresholdsOhms)));
  }

  private static List<Step> steps(Map<LoopState, Band> bands, List<Double> thresholds) {
    List<Map.Entry<LoopState, Band>> states = List.copyOf(bands.entrySet());
    List<Step> steps = new ArrayList<>();
    if (states.size() != thresholds.size() + 1) {
      return steps;
    }
    for (int i = 0; i < thresholds.size(); i++) {
      double threshold = thresholds.get(i);
      double below = threshold - states.get(i).getValue().mostOhms();
      double above = states.get(i + 1).getValue().leastOhms() - threshold;
      steps.add(
          new Step(
              states.get(i).getKey(),
              states.get(i + 1).getKey(),
              threshold,
              Math.min(below, above) / threshold));
    }
    return steps;
  }

  /**
   * More cable only adds to every state: a state that reads too much never recovers, so where all
   * is well without cable there is one length up to which it stays so.
   */
  private static Optional<Double> longest(Loop loop, List<Double> thresholds) {
    if (loop.cable().isEmpty() || !holdsAt(loop, thresholds, 0)) {
      return Optional.empty();
    }
    double well = 0;
    double ill = MOST_METRES;
    if (holdsAt(loop, thresholds, ill)) {
      return Optional.of(ill);
    }
    while (ill - well > 0.1) {
      double middle = (well + ill) / 2;
      if (holdsAt(loop, thresholds, middle)) {
        well = middle;
      } else {
        ill = middle;
      }
    }
    return Optional.of(well);
  }

  private static boolean holdsAt(Loop loop, List<Double> thresholds, double metres) {
    return steps(loop.bandsAt(metres), thresholds).stream().allMatch(Step::holds);
  }
}
