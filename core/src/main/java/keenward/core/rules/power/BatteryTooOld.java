package keenward.core.rules.power;

import java.time.LocalDate;
import java.util.Optional;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Supply;
import keenward.core.quantities.Period;
import keenward.core.rules.Age;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;

/** A standby battery is older than it may become. */
public final class BatteryTooOld implements Rule {

  private static final Period LIFE = new Period(48, "4 y");

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.POWER, 3, "battery-too-old", Severity.WARNING)
          .source(Source.practice())
          .purpose("Looks for standby batteries that were fitted more than four years ago.")
          .consequence(
              "An old battery holds a fraction of its capacity: the system dies with the mains, which is when a"
                  + " burglar, or a fire, comes.")
          .limits(
              "Goes by age alone; a load test says more, and a warm case ages a battery faster. Without a day to"
                  + " judge on, not assessed.")
          .parameter("age of a standby battery", "4", "y")
          .remedy(
              "Replace the battery as its maker says, with the mains isolated by somebody competent.")
          .broken(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { battery: { capacity: 7 Ah, fitted: 2000-03-01 } }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { battery: { capacity: 7 Ah, fitted: 2026-10-02 } }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { battery: { capacity: 7 Ah, fitted: 2024-06-01 } }
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
      PlanPath place = PlanPath.of("supplies", supply.name(), "battery");
      Optional<LocalDate> fitted = supply.battery().find().flatMap(each -> each.fitted().find());
      if (fitted.isEmpty()) {
        report.notAssessed(
            place,
            "the age of the battery of '"
                + supply.name()
                + "', since the plan does not say when it was fitted",
            "battery: { fitted: YYYY-MM-DD }");
        continue;
      }
      Optional<LocalDate> day = input.asOf();
      if (day.isEmpty()) {
        Age.dayMissing(place, "the age of the battery of '" + supply.name() + "'", report);
        continue;
      }
      report.judged();
      if (day.get().isAfter(Age.end(fitted.get(), LIFE))) {
        report.found(
            place.then("fitted"),
            "The battery of '"
                + supply.name()
                + "' was fitted on "
                + fitted.get()
                + ", "
                + Age.months(fitted.get(), day.get())
                + " months before "
                + day.get()
                + "; "
                + LIFE.months()
                + " months are usual.",
            "Replace it as its maker says, and enter the new date as `fitted:`.",
            Involved.NOTHING);
      }
    }
  }
}
