package keenward.core.rules.records;

import java.time.LocalDate;
import java.util.Optional;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Service;
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

/** The next visit was due some time ago. */
public final class ServiceOverdue implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.RECORDS, 3, "service-overdue", Severity.WARNING)
          .source(Source.practice())
          .source(
              Source.read(
                  "NFPA 72",
                  "2013",
                  "14.4.6.1, household: once a year",
                  "trade article on residential fire alarm changes"))
          .purpose(
              "Adds the interval between visits to the last visit, and looks whether that day is past.")
          .consequence(
              "Batteries age and detectors go blind unnoticed; the insurer may refuse to pay.")
          .limits("Knows one interval for the whole site. Without a day to judge on, not assessed.")
          .remedy("Visit the site, and enter the date as `last visit:`.")
          .broken(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              service: { installed: 2000-03-01, last visit: 2002-03-01, every: 12 months }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              service: { installed: 2000-03-01, last visit: 2026-10-02, every: 12 months }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              service: { installed: 2000-03-01, last visit: 2026-02-01, every: 12 months }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    PlanPath place = PlanPath.of("service");
    Optional<Service> service = input.plan().service().find();
    Optional<LocalDate> last =
        service.flatMap(each -> each.lastVisit().or(each.installed()).find());
    Optional<Period> interval = service.flatMap(each -> each.interval().find());
    if (last.isEmpty() || interval.isEmpty()) {
      report.notAssessed(
          place,
          "when the next visit is due, since the plan does not give the last one and the interval",
          "service: { last visit: YYYY-MM-DD, every: 12 months }");
      return;
    }
    Optional<LocalDate> day = input.asOf();
    if (day.isEmpty()) {
      Age.dayMissing(place, "whether a visit is due", report);
      return;
    }
    report.judged();
    LocalDate due = Age.end(last.get(), interval.get());
    if (day.get().isAfter(due)) {
      report.found(
          place.then("last visit"),
          "The last visit was on "
              + last.get()
              + " and the next one "
              + interval.get().written()
              + " later, on "
              + due
              + ": "
              + Age.months(due, day.get())
              + " whole months ago.",
          "Visit the site, and enter the date as `last visit:`.",
          Involved.NOTHING);
    }
  }
}
