package keenward.core.rules.power;

import java.util.Optional;
import java.util.OptionalInt;
import keenward.core.electrical.Cells;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Supply;
import keenward.core.quantities.Voltage;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** A supply empties its battery so deep that the battery is ruined. */
public final class CutOffTooLow implements Rule {

  private static final double LEAST_VOLTS_A_CELL = 1.6;
  // Binary noise must not make 9.6 V less than 6 x 1.6 V.
  private static final double NOISE = 1e-9;

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.POWER, 14, "cut-off-too-low", Severity.WARNING)
          .source(Source.memory("EN 50131-6", "", "protection against deep discharge"))
          .source(Source.practice())
          .purpose(
              "Compares the voltage at which a supply switches its battery off with 1.6 V a cell.")
          .consequence("After one long mains failure the battery takes no charge any more.")
          .limits(
              "Looks at supplies for which `cut off:` is given; 1.6 V a cell is the end of discharge within the hour, 1.75 V that of 20 hours.")
          .parameter("least cut-off", "1.6", "V a cell")
          .remedy("Set the cut-off higher, or choose a supply that protects its battery.")
          .broken(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { voltage: 13.7 V, cut off: 9 V, battery: { capacity: 7 Ah, fitted: 2026-10-02 } }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { voltage: 13.7 V, cut off: 10.5 V, battery: { capacity: 7 Ah, fitted: 2026-10-02 } }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { voltage: 13.7 V, cut off: 9.6 V, battery: { capacity: 7 Ah, fitted: 2026-10-02 } }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    for (Supply supply : input.plan().supplies()) {
      Optional<Voltage> cutOff = supply.cutOff().find();
      if (cutOff.isEmpty()) {
        continue;
      }
      PlanPath place = PlanPath.of("supplies", supply.name(), "cut off");
      OptionalInt cells = Cells.of(supply);
      if (cells.isEmpty()) {
        report.notAssessed(
            place,
            "whether '" + supply.name() + "' protects its battery, whose cells cannot be counted",
            "voltage: 13.6 V");
        continue;
      }
      report.judged();
      double least = cells.getAsInt() * LEAST_VOLTS_A_CELL;
      if (cutOff.get().volts() < least - NOISE) {
        report.found(
            place,
            "'"
                + supply.name()
                + "' empties its battery down to "
                + cutOff.get().written()
                + "; below "
                + Words.number(Math.round(least * 10) / 10.0)
                + " V it is ruined.",
            "Set the cut-off of '" + supply.name() + "' higher.",
            Involved.NOTHING);
      }
    }
  }
}
