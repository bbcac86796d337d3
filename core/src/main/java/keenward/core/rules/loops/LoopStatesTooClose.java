package keenward.core.rules.loops;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import keenward.core.plan.LoopWiring;
import keenward.core.plan.Zone;
import keenward.core.quantities.Resistance;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** Two states of a loop have nearly the same resistance. */
public final class LoopStatesTooClose implements Rule {

  private static final double LEAST_STEP = 0.20;

  /**
   * Sums of stated values carry rounding of a few parts in 10^16; a step of exactly a fifth is
   * enough.
   */
  private static final double ROUNDING = 1e-9;

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.LOOPS, 3, "loop-states-too-close", Severity.ERROR)
          .source(Source.practice())
          .purpose(
              "Computes the resistance of a double or triple loop at rest, in alarm and in fault, and looks for two"
                  + " states that are less than a fifth apart.")
          .consequence(
              "With cable, temperature and tolerance added the panel takes one state for the other: an alarm reads as"
                  + " a fault, or as nothing.")
          .limits(
              "Values in the order at rest, alarm, fault. Takes the nominal values in series; cable and tolerance are"
                  + " not added.")
          .parameter("least step between two states", "20", "% of the lower one")
          .remedy("Choose values whose sums differ by a fifth and more.")
          .broken(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Store motion, response: instant, device: motion, wiring: triple resistor, resistors: [1 kohm, 1 kohm, 1 kohm] }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Store motion, response: instant, device: motion, wiring: triple resistor, resistors: [1 kohm, 1 kohm, 3.01 kohm] }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Store motion, response: instant, device: motion, wiring: double resistor, resistors: [1 kohm, 1 kohm] }
              """)
          .build();

  private record LoopState(String name, double ohms) {}

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    for (Zone zone : input.plan().zones()) {
      List<LoopState> states = states(zone);
      if (!states.isEmpty()) {
        report.judged();
        judge(zone, states, report);
      }
    }
  }

  private static void judge(Zone zone, List<LoopState> states, Report report) {
    for (int index = 1; index < states.size(); index++) {
      LoopState lower = states.get(index - 1);
      LoopState upper = states.get(index);
      if (upper.ohms() < lower.ohms() * (1 + LEAST_STEP) * (1 - ROUNDING)) {
        report.found(
            zone.path().then("resistors"),
            Words.atStart(zone)
                + " reads "
                + Words.number(lower.ohms())
                + " ohm "
                + lower.name()
                + " and "
                + Words.number(upper.ohms())
                + " ohm "
                + upper.name()
                + ", which is less than 20 % apart.",
            "Choose values for zone " + zone.number() + " whose sums differ by a fifth and more.",
            Involved.zone(zone.number()));
        return;
      }
    }
  }

  /**
   * The states with a resistance of their own, lowest first; empty where the loop is not fully
   * stated.
   */
  private static List<LoopState> states(Zone zone) {
    LoopWiring wiring = zone.wiring().orElse(LoopWiring.NONE);
    List<Double> values = zone.resistors().stream().map(Resistance::ohms).toList();
    List<LoopState> states = new ArrayList<>();
    if (wiring == LoopWiring.DOUBLE_RESISTOR && values.size() == 2) {
      states.add(new LoopState("at rest", values.get(0)));
      states.add(new LoopState("in alarm", values.get(0) + values.get(1)));
    } else if (wiring == LoopWiring.TRIPLE_RESISTOR && values.size() == 3) {
      states.add(new LoopState("at rest", values.get(0)));
      states.add(new LoopState("in alarm", values.get(0) + values.get(1)));
      states.add(new LoopState("in fault", values.get(0) + values.get(2)));
      states.add(
          new LoopState("in alarm and fault", values.get(0) + values.get(1) + values.get(2)));
    }
    states.sort(Comparator.comparingDouble(LoopState::ohms));
    return states;
  }
}
