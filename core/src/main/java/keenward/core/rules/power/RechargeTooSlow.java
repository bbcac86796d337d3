package keenward.core.rules.power;

import java.util.Optional;
import keenward.core.electrical.PowerBudget;
import keenward.core.electrical.Recharge;
import keenward.core.electrical.RechargeRule;
import keenward.core.plan.PlanPath;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** A battery takes longer to charge again than the regime allows. */
public final class RechargeTooSlow implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.POWER, 5, "recharge-too-slow", Severity.WARNING)
          .source(
              Source.memory(
                  "EN 50131-6",
                  "",
                  "recharge to 80 %: 72 h at grades 1 and 2, 24 h at grades 3 and 4"))
          .purpose(
              "Computes how long the supply charges an empty battery, and compares it with the regime.")
          .consequence("After one long mains failure the next one finds the battery half empty.")
          .limits(
              "Reckons with the full charging current all the time and a fixed loss; a real charger tapers off.")
          .remedy("Choose a smaller battery that still suffices, or a supply that charges faster.")
          .broken(
              """
              keenward: 1
              site: Example
              regime: en50131 grade 3
              supplies:
                Main: { charge current: 400 mA, battery: { capacity: 17 Ah, fitted: 2026-10-02 } }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              regime: en50131 grade 3
              supplies:
                Main: { charge current: 1000 mA, battery: { capacity: 17 Ah, fitted: 2026-10-02 } }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              regime: en50131 grade 3
              supplies:
                Main: { charge current: 900 mA, battery: { capacity: 17 Ah, fitted: 2026-10-02 } }
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
      Optional<Recharge> recharge = budget.recharge();
      String name = budget.supply().name();
      if (budget.leftForBattery().filter(left -> !(left.value() > 0)).isPresent()) {
        // ChargerOverdrawn says so.
        continue;
      }
      if (recharge.isEmpty()) {
        report.notAssessed(
            PlanPath.of("supplies", name),
            "how long '"
                + name
                + "' charges its battery, since the plan lacks its charging current or the capacity",
            "charge current: ... mA");
        continue;
      }
      Optional<RechargeRule> rule = recharge.get().rule();
      if (rule.isEmpty()) {
        continue;
      }
      report.judged();
      double hours = recharge.get().hours().value();
      if (hours > rule.get().hours()) {
        report.found(
            PlanPath.of("supplies", name, "charge current"),
            "Supply '"
                + name
                + "' takes "
                + Words.number(Math.round(hours * 10) / 10.0)
                + " h to charge its battery to "
                + Words.number(rule.get().share() * 100)
                + " %, and "
                + rule.get().source()
                + " allows "
                + Words.number(rule.get().hours())
                + " h.",
            "Choose a supply that charges faster than '"
                + name
                + "', or a smaller battery that suffices.",
            Involved.NOTHING);
      }
    }
  }
}
