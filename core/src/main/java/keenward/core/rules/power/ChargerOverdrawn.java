package keenward.core.rules.power;

import java.util.Optional;
import keenward.core.electrical.Certainty;
import keenward.core.electrical.Explained;
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

/** The load at rest takes all the current that a supply has, and leaves none for the battery. */
public final class ChargerOverdrawn implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.POWER, 8, "charger-overdrawn", Severity.ERROR)
          .source(
              Source.memory(
                  "EN 50131-6",
                  "",
                  "a supply feeds the load and charges its battery at the same time"))
          .source(Source.memory("IEEE 946", "", "charger: load + 1.1 x Ah / h"))
          .purpose("Takes the load at rest off the current that board, devices and battery share.")
          .consequence(
              "The battery is never charged again after the first mains failure, and drains a little each day.")
          .limits(
              "Looks at supplies for which `total current:` is given; what is left but slow is PWR-05.")
          .remedy("Move devices to another supply, or choose a larger one.")
          .broken(
              """
              keenward: 1
              site: Example
              supplies:
                Main:
                  own standby current: 300 mA
                  own alarm current: 400 mA
                  charge current: 500 mA
                  total current: 250 mA
                  battery: { capacity: 7 Ah, fitted: 2026-10-02 }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              supplies:
                Main:
                  own standby current: 300 mA
                  own alarm current: 400 mA
                  charge current: 500 mA
                  total current: 1000 mA
                  battery: { capacity: 7 Ah, fitted: 2026-10-02 }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              supplies:
                Main:
                  own standby current: 300 mA
                  own alarm current: 400 mA
                  charge current: 500 mA
                  total current: 320 mA
                  battery: { capacity: 7 Ah, fitted: 2026-10-02 }
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
      Optional<Explained> left = budget.leftForBattery();
      if (left.isPresent()) {
        judge(budget, left.get(), report);
      }
    }
  }

  private static void judge(PowerBudget budget, Explained left, Report report) {
    String name = budget.supply().name();
    if (left.value() > 0 && left.certainty() != Certainty.KNOWN) {
      report.notAssessed(
          PlanPath.of("supplies", name),
          "whether '" + name + "' can charge its battery: " + left.result() + " are left for it",
          "standby current: ... mA");
      return;
    }
    report.judged();
    if (left.value() <= 0) {
      report.found(
          PlanPath.of("supplies", name, "total current"),
          "At rest "
              + budget.standby().result()
              + " are drawn from '"
              + name
              + "', which has "
              + budget.supply().totalCurrent().map(Current::written).orElse("")
              + " for load and battery together: its battery is not charged.",
          "Move devices to another supply, or choose a larger one than '" + name + "'.",
          Involved.NOTHING);
    }
  }
}
