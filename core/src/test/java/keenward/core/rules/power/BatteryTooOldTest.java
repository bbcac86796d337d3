package keenward.core.rules.power;

import static keenward.core.rules.RuleCheck.lines;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import keenward.core.plan.PlanBuilder;
import keenward.core.rules.CheckInput;
import org.junit.jupiter.api.Test;

class BatteryTooOldTest {

  private final BatteryTooOld rule = new BatteryTooOld();

  private static PlanBuilder site() {
    return PlanBuilder.site()
        .supply("Main", supply -> supply.battery("7 Ah").batteryFitted("2022-10-05"));
  }

  private static CheckInput on(String day) {
    return CheckInput.of(site().build()).asOf(LocalDate.parse(day));
  }

  @Test
  void findsABatteryTheDayAfterItsFourYears() {
    assertThat(lines(run(rule, on("2026-10-06"))))
        .containsExactly(
            "warning at supplies / Main / battery / fitted: The battery of 'Main' was fitted on"
                + " 2022-10-05, 48 months before 2026-10-06; 48 months are usual.");
    assertThat(lines(run(rule, on("2026-10-05")))).isEmpty();
  }

  @Test
  void doesNotAssessWithoutADayOrADate() {
    assertThat(notAssessed(rule, site()))
        .containsExactly(
            "supplies / Main / battery: the age of the battery of 'Main', since no day is given on which"
                + " to judge it; add: --as-of YYYY-MM-DD");
    assertThat(
            notAssessed(rule, PlanBuilder.site().supply("Main", supply -> supply.battery("7 Ah"))))
        .singleElement()
        .asString()
        .endsWith("add: battery: { fitted: YYYY-MM-DD }");
  }
}
