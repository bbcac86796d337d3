package keenward.core.rules.loops;

import java.util.Collections;
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

/** The resistors of a loop are not as many as its wiring needs. */
public final class WrongNumberOfResistors implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.LOOPS, 1, "wrong-number-of-resistors", Severity.ERROR)
          .source(Source.practice())
          .purpose("Compares the number of resistors of a wired loop with what its wiring needs.")
          .consequence(
              "The panel reads another resistance than it expects: the zone shows a fault at rest, or takes a cut"
                  + " cable for a closed door.")
          .limits(
              "Counts resistors; their values are another rule's. Where several detectors share a loop, the"
                  + " resistors of one chain are counted.")
          .parameter("resistors of a loop without resistor", "0", "")
          .parameter("resistors of a single-resistor loop", "1", "")
          .parameter("resistors of a double-resistor loop", "2", "")
          .parameter("resistors of a triple-resistor loop", "3", "")
          .remedy(
              "State one value for each resistor of the wiring, or the wiring that is really there.")
          .broken(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Store door, response: perimeter, device: contact, wiring: double resistor, resistors: [4.7 kohm] }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Store door, response: perimeter, device: contact, wiring: double resistor, resistors: [4.7 kohm, 4.7 kohm] }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Store door, response: perimeter, device: contact, wiring: single resistor, resistors: [4.7 kohm] }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    for (Zone zone : input.plan().zones()) {
      if (zone.wiring().isGiven()) {
        judge(zone, zone.wiring().orElse(LoopWiring.NONE), report);
      } else if (!zone.resistors().isEmpty()) {
        report.notAssessed(
            zone.path().then("wiring"),
            Words.atStart(zone)
                + " has "
                + Words.count(zone.resistors().size(), "resistor")
                + ", and the plan does not say how its loop is wired",
            "wiring: single resistor");
      }
    }
  }

  private static void judge(Zone zone, LoopWiring wiring, Report report) {
    int needed = wiring.resistors();
    int stated = zone.resistors().size();
    if (needed > 0 && stated == 0) {
      report.notAssessed(
          zone.path().then("resistors"),
          Words.atStart(zone) + " is wired as " + wiring.word() + ", and the plan gives no values",
          "resistors: [" + String.join(", ", Collections.nCopies(needed, "4.7 kohm")) + "]");
      return;
    }
    report.judged();
    if (stated != needed) {
      report.found(
          zone.path().then("resistors"),
          Words.atStart(zone)
              + " is wired as "
              + wiring.word()
              + ", which takes "
              + Words.count(needed, "resistor")
              + ", and the plan gives "
              + stated
              + " ("
              + Words.list(zone.resistors().stream().map(Resistance::written).toList())
              + ").",
          "State "
              + Words.count(needed, "value")
              + " for zone "
              + zone.number()
              + ", or the wiring that is really there.",
          Involved.zone(zone.number()));
    }
  }
}
