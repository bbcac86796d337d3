package keenward.core.rules.survey;

import static keenward.core.plan.DeviceKind.MOTION;
import static keenward.core.plan.DeviceKind.SMOKE;
import static keenward.core.plan.Standard.CP_01;
import static keenward.core.plan.Standard.EN50131;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class DeviceBelowGradeTest {

  private final DeviceBelowGrade rule = new DeviceBelowGrade();

  private static PlanBuilder motion(int grade) {
    return PlanBuilder.site()
        .device("Eye", MOTION, device -> device.grade(grade))
        .device("Smoke", SMOKE);
  }

  @Test
  void findsALowerGradeAndPassesTheSame() {
    assertThat(findings(rule, motion(2).grade(EN50131, 3)))
        .containsExactly(
            "error at devices / Eye / security grade: Device 'Eye' has grade 2, and the system is to have"
                + " grade 3.");
    assertThat(findings(rule, motion(3).grade(EN50131, 3))).isEmpty();
  }

  @Test
  void doesNotAssessWithoutAGradeOnEitherSide() {
    assertThat(notAssessed(rule, PlanBuilder.site().device("Eye", MOTION).grade(EN50131, 2)))
        .containsExactly(
            "devices / Eye: whether 'Eye' has grade 2, since the plan states no grade; add: security"
                + " grade: 2");
    assertThat(notAssessed(rule, motion(2).regime(EN50131))).hasSize(1);
    assertThat(run(rule, motion(2).regime(CP_01)).judgedCount()).isZero();
  }
}
