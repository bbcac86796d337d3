package keenward.core.plan;

import java.time.LocalDate;
import keenward.core.quantities.Period;

/**
 * Maintenance.
 *
 * @param installed date the system was installed
 * @param lastVisit date of the last visit
 * @param interval interval between visits
 * @param by who does it
 */
public record Service(
    Fact<LocalDate> installed, Fact<LocalDate> lastVisit, Fact<Period> interval, Fact<String> by) {}
