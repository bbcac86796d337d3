package keenward.core.rules.records;

import static keenward.core.rules.RuleCheck.lines;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import keenward.core.plan.PlanBuilder;
import keenward.core.rules.CheckInput;
import org.junit.jupiter.api.Test;

class ServiceOverdueTest {

  private final ServiceOverdue rule = new ServiceOverdue();

  private static PlanBuilder site() {
    return PlanBuilder.site().service("2024-10-02", "2025-10-02", "12 months");
  }

  @Test
  void findsAVisitThatWasDue() {
    assertThat(lines(run(rule, CheckInput.of(site().build()).asOf(LocalDate.of(2026, 12, 5)))))
        .containsExactly(
            "warning at service / last visit: The last visit was on 2025-10-02 and the next one 12 months"
                + " later, on 2026-10-02: 2 whole months ago.");
  }

  @Test
  void passesOnTheDayItself() {
    assertThat(lines(run(rule, CheckInput.of(site().build()).asOf(LocalDate.of(2026, 10, 2)))))
        .isEmpty();
  }

  @Test
  void doesNotAssessWithoutADayOrTheDates() {
    assertThat(notAssessed(rule, site())).hasSize(1);
    assertThat(notAssessed(rule, PlanBuilder.site()))
        .containsExactly(
            "service: when the next visit is due, since the plan does not give the last one and the"
                + " interval; add: service: { last visit: YYYY-MM-DD, every: 12 months }");
  }
}
