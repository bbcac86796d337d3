package keenward.core.rules.power;

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

/** More batteries are connected in parallel than share a current evenly. */
public final class TooManyBatteries implements Rule {

  private static final int MOST = 4;

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.POWER, 11, "too-many-batteries", Severity.WARNING)
          .source(Source.practice())
          .purpose("Counts the batteries in parallel of each supply.")
          .consequence(
              "The ones with the shortest leads carry most of the current; a failed one is not noticed and empties the rest.")
          .limits("The maker of the battery may allow more, or fewer.")
          .parameter("batteries in parallel", "4", "")
          .remedy("Fit fewer and larger batteries.")
          .broken(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { battery: { capacity: 7 Ah, fitted: 2026-10-02, count: 5, alike: yes } }
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
                Main: { battery: { capacity: 7 Ah, fitted: 2026-10-02, count: 4, alike: yes } }
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
      int count = supply.battery().find().map(each -> each.count().orElse(1)).orElse(1);
      report.judged();
      if (count > MOST) {
        report.found(
            PlanPath.of("supplies", supply.name(), "battery", "count"),
            "'"
                + supply.name()
                + "' has "
                + count
                + " batteries in parallel; "
                + MOST
                + " are the usual most.",
            "Fit fewer and larger batteries in '" + supply.name() + "'.",
            Involved.NOTHING);
      }
    }
  }
}
