package keenward.core.rules.power;

import static keenward.core.plan.Standard.EN50131;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

/** EN 50131-6, from memory: 80 % within 72 h at grades 1 and 2, within 24 h at grades 3 and 4. */
class RechargeTooSlowTest {

  private final RechargeTooSlow rule = new RechargeTooSlow();

  private static PlanBuilder site(int grade) {
    return PlanBuilder.site()
        .grade(EN50131, grade)
        .supply("Main", supply -> supply.charge("400 mA").battery("17 Ah"));
  }

  @Test
  void findsAChargerTooSlowForGradeThreeThatSufficesForGradeTwo() {
    assertThat(findings(rule, site(3)))
        .singleElement()
        .asString()
        .startsWith("warning at supplies / Main / charge current: Supply 'Main' takes ")
        .contains("to charge its battery to 80 %");
    assertThat(findings(rule, site(2))).isEmpty();
  }

  @Test
  void doesNotAssessWithoutTheChargingCurrent() {
    assertThat(
            notAssessed(rule, PlanBuilder.site().supply("Main", supply -> supply.battery("7 Ah"))))
        .hasSize(1);
  }
}
