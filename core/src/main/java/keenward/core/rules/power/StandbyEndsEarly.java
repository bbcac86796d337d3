package keenward.core.rules.power;

import java.util.Optional;
import keenward.core.electrical.PowerBudget;
import keenward.core.electrical.outage.Outage;
import keenward.core.electrical.outage.OutageEvent;
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

/** A battery that is large enough on paper is off before the time that the regime wants is over. */
public final class StandbyEndsEarly implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.POWER, 7, "standby-ends-early", Severity.ERROR)
          .source(Source.memory("EN 50131-6", "", "standby table by grade"))
          .source(Source.memory("UL 1023", "", "standby 4 h, then 4 min of alarm"))
          .source(Source.practice())
          .purpose(
              "Empties the fitted battery as the regime wants and looks whether it lasts: a heavy load gets less out of it than is marked, and a high cut-off leaves charge in it.")
          .consequence(
              "The system goes dead before its time, with a battery that passed the sum of ampere-hours.")
          .limits(
              "Looks at batteries that PWR-01 does not find too small. Rate effect by Peukert with k = 1.15, discharge curve of common practice.")
          .remedy("Fit a larger battery, or a supply that switches off later.")
          .broken(
              """
              keenward: 1
              site: Example
              regime: ul1023
              supplies:
                Main:
                  voltage: 13.7 V
                  rating: 1000 mA
                  own standby current: 200 mA
                  own alarm current: 300 mA
                  charge current: 600 mA
                  battery: { capacity: 2 Ah, fitted: 2026-10-02 }
                  lowest temperature: 25 C
                  ageing factor: 1.25
                  cut off: 12.2 V
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              regime: ul1023
              supplies:
                Main:
                  voltage: 13.7 V
                  rating: 1000 mA
                  own standby current: 200 mA
                  own alarm current: 300 mA
                  charge current: 600 mA
                  battery: { capacity: 2 Ah, fitted: 2026-10-02 }
                  lowest temperature: 25 C
                  ageing factor: 1.25
                  cut off: 10.5 V
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              regime: ul1023
              supplies:
                Main:
                  voltage: 13.7 V
                  rating: 1000 mA
                  own standby current: 200 mA
                  own alarm current: 300 mA
                  charge current: 600 mA
                  battery: { capacity: 2 Ah, fitted: 2026-10-02 }
                  lowest temperature: 25 C
                  ageing factor: 1.25
                  cut off: 11.9 V
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
      Optional<Outage> outage =
          input.outages().of(budget.supply().name()).filter(each -> each.duty().isPresent());
      boolean isTooSmall = budget.margin().filter(each -> each.value() < 0).isPresent();
      if (outage.isEmpty() || isTooSmall) {
        continue;
      }
      report.judged();
      judge(outage.get(), report);
    }
  }

  private static void judge(Outage outage, Report report) {
    if (outage.hours() >= outage.wantedHours()) {
      return;
    }
    OutageEvent end = outage.events().getLast();
    report.found(
        PlanPath.of("supplies", outage.supply(), outage.last().share() > 0 ? "cut off" : "battery"),
        "The battery of '"
            + outage.supply()
            + "' ends after "
            + end.when()
            + " with "
            + Words.number(Math.rint(outage.last().share() * 100))
            + " % left in it, and "
            + outage.duty().orElseThrow().regime()
            + " wants "
            + OutageEvent.time(outage.wantedHours())
            + ".",
        "Give '" + outage.supply() + "' a larger battery, or let it switch off at a lower voltage.",
        Involved.NOTHING);
  }
}
