package keenward.core.rules.power;

import java.util.Optional;
import keenward.core.plan.Battery;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Supply;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;

/** Batteries of different type, capacity or age are connected in parallel. */
public final class BatteriesUnlike implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.POWER, 10, "batteries-unlike", Severity.ERROR)
          .source(Source.practice())
          .source(Source.memory("IEEE 1188", "", "replacing cells: like with like"))
          .purpose("Looks at supplies with several batteries in parallel that are not all alike.")
          .consequence(
              "One charges the other: the weaker is overcharged and gets hot, the better is worn out early, and hundreds of amperes flow if one has a shorted cell.")
          .limits("The plan says whether they are alike.")
          .remedy(
              "Replace all of them at once with batteries of one type and batch, one fuse in each lead.")
          .broken(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { battery: { capacity: 7 Ah, fitted: 2026-10-02, count: 2, alike: no } }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { battery: { capacity: 7 Ah, fitted: 2026-10-02, count: 2, alike: yes } }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { battery: { capacity: 7 Ah, fitted: 2026-10-02, count: 1, alike: no } }
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
      Optional<Battery> battery =
          supply.battery().find().filter(each -> each.count().orElse(1) > 1);
      if (battery.isEmpty()) {
        continue;
      }
      PlanPath place = PlanPath.of("supplies", supply.name(), "battery");
      Optional<Boolean> alike = battery.get().alike().find();
      if (alike.isEmpty()) {
        report.notAssessed(
            place,
            "whether the batteries of '" + supply.name() + "' may be connected in parallel",
            "alike: yes");
        continue;
      }
      report.judged();
      if (!alike.get()) {
        report.found(
            place.then("alike"),
            "The "
                + battery.get().count().orElse(1)
                + " batteries in parallel of '"
                + supply.name()
                + "' are not alike.",
            "Replace all batteries of '" + supply.name() + "' at once with one type and batch.",
            Involved.NOTHING);
      }
    }
  }
}
