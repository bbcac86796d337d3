package keenward.core.rules.power;

import static keenward.core.plan.DeviceKind.MOTION;
import static keenward.core.plan.DeviceKind.SIREN;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class OutputOverloadedTest {

  private final OutputOverloaded rule = new OutputOverloaded();

  /** 320 mA + 18 mA = 338 mA in alarm. */
  private static PlanBuilder site(String rating) {
    return PlanBuilder.site()
        .supply("Main", supply -> supply.rating(rating).own("500 mA", "500 mA"))
        .device("Siren", SIREN, device -> device.wired().draws("10 mA", "320 mA").supply("Main"))
        .device("Eye", MOTION, device -> device.wired().draws("12 mA", "18 mA").supply("Main"));
  }

  @Test
  void findsALoadAboveTheRatingWithoutTheBoardsOwn() {
    assertThat(findings(rule, site("330 mA")))
        .containsExactly(
            "error at supplies / Main / rating: The devices of 'Main' draw 338 mA in alarm, 102.4 % of its"
                + " rating of 330 mA.");
    assertThat(run(rule, site("330 mA")).findings().getFirst().involved().devices())
        .containsExactly("Siren", "Eye");
  }

  @Test
  void warnsAboveFourFifths() {
    assertThat(findings(rule, site("400 mA")))
        .containsExactly(
            "warning at supplies / Main / rating: The devices of 'Main' draw 338 mA in alarm, 84.5 % of its"
                + " rating of 400 mA.");
    assertThat(findings(rule, site("500 mA"))).isEmpty();
  }

  @Test
  void doesNotAssessWithoutTheRatingOrACurrent() {
    assertThat(notAssessed(rule, PlanBuilder.site().supply("Main", supply -> {}))).hasSize(1);
    assertThat(
            notAssessed(
                rule,
                site("500 mA").device("Horn", SIREN, device -> device.wired().supply("Main"))))
        .hasSize(1);
  }
}
