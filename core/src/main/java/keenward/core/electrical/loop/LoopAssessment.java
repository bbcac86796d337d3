package keenward.core.electrical.loop;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.quantities.Resistance;

/**
 * Every loop of a site.
 *
 * @param loops the loops of which the plan says enough, in its order
 * @param notAssessed what it does not say of others
 */
public record LoopAssessment(List<Assessed> loops, List<MissingFact> notAssessed) {

  /**
   * One loop.
   *
   * @param loop the loop
   * @param check whether the panel tells its states apart; empty when the plan gives no thresholds
   *     for its wiring
   */
  public record Assessed(Loop loop, Optional<LoopCheck> check) {}

  public LoopAssessment {
    loops = List.copyOf(loops);
    notAssessed = List.copyOf(notAssessed);
  }

  /** The loops of a plan, each as far off as usual. */
  public static LoopAssessment of(SitePlan plan) {
    List<Assessed> loops = new ArrayList<>();
    List<MissingFact> open = new ArrayList<>();
    for (Zone zone : plan.zones()) {
      switch (Loop.of(zone, LoopTolerances.USUAL)) {
        case Loop.Found.Known(Loop loop) -> loops.add(new Assessed(loop, check(plan, loop)));
        case Loop.Found.NotKnown(MissingFact missing) -> open.add(missing);
        case Loop.Found.None() -> {}
      }
    }
    loops.stream()
        .filter(each -> each.check().isEmpty() && !each.loop().resistorsOhms().isEmpty())
        .findFirst()
        .ifPresent(each -> open.add(thresholds(each.loop())));
    return new LoopAssessment(loops, open);
  }

  private static Optional<LoopCheck> check(SitePlan plan, Loop loop) {
    return Optional.ofNullable(plan.panel().loopThresholds().get(loop.wiring()))
        .map(values -> values.stream().map(Resistance::ohms).toList())
        .flatMap(values -> LoopCheck.of(loop, values));
  }

  private static MissingFact thresholds(Loop loop) {
    String word = loop.wiring().word();
    return new MissingFact(
        PlanPath.of("panel"),
        "whether the panel tells the states of a "
            + word
            + " loop apart, since the plan does not say at which resistances it changes its mind",
        "loop thresholds: { "
            + word
            + ": ["
            + switch (loop.wiring()) {
              case DOUBLE_RESISTOR -> "1 kohm, 7 kohm, 14 kohm";
              case TRIPLE_RESISTOR -> "500 ohm, 1.5 kohm, 3 kohm, 4.5 kohm, 8 kohm";
              default -> "1 kohm, 8 kohm";
            }
            + "] }");
  }

  /** Loops that read the same, in the order of the first of them. */
  public List<List<Assessed>> alike() {
    Map<List<Object>, List<Assessed>> alike = new LinkedHashMap<>();
    for (Assessed each : loops) {
      alike
          .computeIfAbsent(
              List.of(each.loop().circuit(), each.loop().bands()), ignored -> new ArrayList<>())
          .add(each);
    }
    return List.copyOf(alike.values());
  }
}
