package keenward.core.rules;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import keenward.core.plan.PlanPath;
import keenward.core.quantities.Period;

/** Reckons how old things are; the day is given, since rules have no clock. */
public final class Age {

  private Age() {}

  /** The day on which a period that begins with another day is over. */
  public static LocalDate end(LocalDate begin, Period period) {
    return begin.plusMonths(period.months());
  }

  /** Whole months from one day to another. */
  public static long months(LocalDate from, LocalDate to) {
    return ChronoUnit.MONTHS.between(from, to);
  }

  /** Says that nothing can be judged without the day. */
  public static void dayMissing(PlanPath place, String what, Report report) {
    report.notAssessed(
        place, what + ", since no day is given on which to judge it", "--as-of YYYY-MM-DD");
  }
}
