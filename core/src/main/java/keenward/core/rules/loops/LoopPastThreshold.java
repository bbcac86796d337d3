package keenward.core.rules.loops;

import java.util.List;
import java.util.Optional;
import keenward.core.electrical.loop.FaultFinder;
import keenward.core.electrical.loop.LoopAssessment;
import keenward.core.electrical.loop.LoopCheck;
import keenward.core.plan.MissingFact;
import keenward.core.plan.Zone;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** A loop reads on the wrong side of a threshold of the panel at the worst corner. */
public final class LoopPastThreshold implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.LOOPS, 5, "loop-past-threshold", Severity.ERROR)
          .source(Source.practice())
          .purpose(
              "Compares what each state of a loop reads at its worst corners (resistor tolerance, cable, temperature,"
                  + " contacts, leakage) with the thresholds of the panel.")
          .consequence(
              "The panel takes one state for another: alarms that nobody raised, or none where one was.")
          .limits(
              "Needs `loop thresholds:` from the panel's manual. Tolerances: 5 % for values of E24, 1 % for those of E96 alone (IEC 60063);"
                  + " cable from -10 to 60 C, closed contacts 1 ohm, leakage 1 Mohm (common practice, no source). Contacts that are open at rest"
                  + " with several resistors are not judged.")
          .remedy("Fit the resistors that the panel asks for, or a thicker or shorter cable.")
          .broken(
              """
              keenward: 1
              site: Example
              panel: { loop thresholds: { double resistor: [1 kohm, 4.8 kohm, 14 kohm] } }
              devices:
                Door contact: { kind: contact, wiring: wired }
              zones:
                1: { name: Door, response: instant, device: Door contact, wiring: double resistor, resistors: [4.7 kohm, 4.7 kohm], contact: normally-closed }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              panel: { loop thresholds: { double resistor: [1 kohm, 7 kohm, 14 kohm] } }
              devices:
                Door contact: { kind: contact, wiring: wired }
              zones:
                1: { name: Door, response: instant, device: Door contact, wiring: double resistor, resistors: [4.7 kohm, 4.7 kohm], contact: normally-closed }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              panel: { loop thresholds: { double resistor: [1 kohm, 5.2 kohm, 14 kohm] } }
              devices:
                Door contact: { kind: contact, wiring: wired }
              zones:
                1: { name: Door, response: instant, device: Door contact, wiring: double resistor, resistors: [4.7 kohm, 4.7 kohm], contact: normally-closed, loop cable: { length: 60 m, conductor: 0.22 mm2 } }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    for (LoopAssessment.Assessed each : input.loops().loops()) {
      if (each.check().isPresent()) {
        report.judged();
        Zone zone = each.loop().zone();
        worst(each.check().get()).ifPresent(step -> report(zone, step, report));
      }
    }
    input.loops().notAssessed().stream()
        .filter(missing -> missing.place().steps().size() == 1)
        .findFirst()
        .ifPresent((MissingFact missing) -> report.notAssessed(missing));
  }

  private static Optional<LoopCheck.Step> worst(LoopCheck check) {
    return check.steps().stream()
        .filter(step -> !step.holds())
        .min((one, other) -> Double.compare(one.spareShare(), other.spareShare()));
  }

  private static void report(Zone zone, LoopCheck.Step step, Report report) {
    report.found(
        zone.path().then("resistors"),
        Words.atStart(zone)
            + " may be read as "
            + step.upper().words()
            + " when it is "
            + step.lower().words()
            + ", or the other way round: at the worst corner one of them passes the panel's threshold of "
            + FaultFinder.ohms(step.thresholdOhms())
            + " by "
            + Math.max(1, Math.round(-100 * step.spareShare()))
            + " %.",
        "Fit the resistors that the panel asks for, or a thicker or shorter cable.",
        Involved.zones(List.of(zone.number())));
  }
}
