package keenward.core.rules.power;

import java.util.Optional;
import keenward.core.electrical.PowerBudget;
import keenward.core.plan.PlanPath;
import keenward.core.quantities.Current;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** A battery may be charged with more current than it stands. */
public final class ChargingTooFast implements Rule {

  private static final double MOST_RATE = 0.3;
  // Binary noise must not make 2.1 A more than 0.3 x 7 Ah.
  private static final double NOISE = 1e-9;

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.POWER, 9, "charging-too-fast", Severity.WARNING)
          .source(Source.practice())
          .purpose(
              "Compares the greatest charging current with the capacity of the fitted batteries.")
          .consequence("The battery gets hot and dries out; in a closed case it can give off gas.")
          .limits("The data sheet of the battery rules where it allows more.")
          .parameter("charging current", "0.3", "A for each Ah")
          .remedy("Fit a larger battery, or set the charging current lower.")
          .broken(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { charge current: 2.5 A, battery: { capacity: 7 Ah, fitted: 2026-10-02 } }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { charge current: 1 A, battery: { capacity: 7 Ah, fitted: 2026-10-02 } }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { charge current: 2.1 A, battery: { capacity: 7 Ah, fitted: 2026-10-02 } }
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
    for (PowerBudget budget : input.power().supplies()) {
      Optional<Current> charging = budget.supply().chargeCurrent().find();
      double capacity = budget.fitted().map(each -> each.value()).orElse(0.0);
      if (charging.isEmpty() || !(capacity > 0)) {
        // RechargeTooSlow and BatteryTooSmall ask for both.
        continue;
      }
      report.judged();
      double rate = charging.get().milliamps() / 1000 / capacity;
      if (rate > MOST_RATE + NOISE) {
        String name = budget.supply().name();
        report.found(
            PlanPath.of("supplies", name, "charge current"),
            "Supply '"
                + name
                + "' charges "
                + Words.number(capacity)
                + " Ah with up to "
                + charging.get().written()
                + ", "
                + Words.number(Math.round(rate * 100) / 100.0)
                + " A for each Ah; "
                + Words.number(MOST_RATE)
                + " is the usual most.",
            "Give '" + name + "' a larger battery, or set its charging current lower.",
            Involved.NOTHING);
      }
    }
  }
}
