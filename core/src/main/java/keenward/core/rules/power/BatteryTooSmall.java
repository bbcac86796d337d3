package keenward.core.rules.power;

import java.util.Optional;
import keenward.core.electrical.BatteryChoice;
import keenward.core.electrical.BatteryNeed;
import keenward.core.electrical.Certainty;
import keenward.core.electrical.PowerBudget;
import keenward.core.plan.MissingFact;
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

/** A standby battery does not last as long as the regime asks. */
public final class BatteryTooSmall implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.POWER, 1, "battery-too-small", Severity.ERROR)
          .source(Source.memory("EN 50131-6", "", "standby table by grade"))
          .source(Source.memory("UL 1023", "", "standby 4 h, then 4 min of alarm"))
          .source(
              Source.read(
                  "NFPA 72",
                  "2007",
                  "11.6.2(2), household: standby 24 h, then 4 min of alarm",
                  "trade article on residential fire alarm systems"))
          .purpose(
              "Compares the capacity of each standby battery with what the strictest regime asks for: load at rest and"
                  + " in alarm, hours, cold and age, each shown in the power sheet.")
          .consequence(
              "In a long mains failure, or when a burglar cuts the mains, the system goes dead before its time.")
          .limits(
              "Where a current is not known the need is at least what is printed; a battery that suffices for it is"
                  + " then not assessed. Methods and factors are in docs/methods/battery.md.")
          .remedy(
              "Fit the next size that the supply may hold and charge, or share the load between supplies.")
          .broken(
              """
              keenward: 1
              site: Example
              regime: nfpa72-household
              supplies:
                Main:
                  voltage: 13.7 V
                  rating: 1000 mA
                  own standby current: 120 mA
                  own alarm current: 200 mA
                  charge current: 600 mA
                  battery: { capacity: 2 Ah, fitted: 2026-10-02 }
                  lowest temperature: 25 C
                  ageing factor: 1.25
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              regime: nfpa72-household
              supplies:
                Main:
                  voltage: 13.7 V
                  rating: 1000 mA
                  own standby current: 120 mA
                  own alarm current: 200 mA
                  charge current: 1000 mA
                  battery: { capacity: 7 Ah, fitted: 2026-10-02 }
                  lowest temperature: 25 C
                  ageing factor: 1.25
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              regime: nfpa72-household
              supplies:
                Main:
                  voltage: 13.7 V
                  rating: 1000 mA
                  own standby current: 120 mA
                  own alarm current: 200 mA
                  charge current: 1000 mA
                  battery: { capacity: 4 Ah, fitted: 2026-10-02 }
                  lowest temperature: 25 C
                  ageing factor: 1.25
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
    input.power().notAssessed().stream()
        .filter(fact -> input.power().supplies().isEmpty())
        .forEach(report::notAssessed);
    for (PowerBudget budget : input.power().supplies()) {
      judge(budget, report);
    }
  }

  private static void judge(PowerBudget budget, Report report) {
    Optional<BatteryNeed> need = budget.strictest();
    double margin = budget.margin().map(line -> line.value()).orElse(0.0);
    boolean isKnown = need.filter(each -> each.needed().certainty() == Certainty.KNOWN).isPresent();
    if (need.isEmpty() || budget.margin().isEmpty() || (margin >= 0 && !isKnown)) {
      notAssessed(budget, report);
      return;
    }
    report.judged();
    if (margin >= 0) {
      return;
    }
    double fitted = budget.fitted().map(line -> line.value()).orElse(0.0);
    report.found(
        PlanPath.of("supplies", budget.supply().name(), "battery"),
        "The battery of '"
            + budget.supply().name()
            + "' holds "
            + Words.number(fitted)
            + " Ah, and "
            + need.get().duty().regime()
            + " needs "
            + need.get().needed().result()
            + " for "
            + Words.number(need.get().duty().standbyHours())
            + " h at rest and "
            + Words.number(need.get().duty().alarmMinutes())
            + " min in alarm.",
        "Fit " + budget.choice().map(BatteryChoice::words).orElse("a larger battery") + ".",
        Involved.NOTHING);
  }

  private static void notAssessed(PowerBudget budget, Report report) {
    Optional<MissingFact> first = budget.notAssessed().stream().findFirst();
    report.notAssessed(
        first.map(MissingFact::place).orElse(PlanPath.of("supplies", budget.supply().name())),
        "whether the battery of '"
            + budget.supply().name()
            + "' is large enough; "
            + Words.count(budget.notAssessed().size(), "fact")
            + " missing, first: "
            + first.map(MissingFact::why).orElse("none"),
        first.map(MissingFact::lineToAdd).orElse("battery: { capacity: ... Ah }"));
  }
}
