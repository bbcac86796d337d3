package keenward.core.rules.power;

import static keenward.core.plan.DeviceKind.SIREN;
import static keenward.core.plan.Standard.NFPA72_HOUSEHOLD;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class BatteryTooSmallTest {

  private final BatteryTooSmall rule = new BatteryTooSmall();

  private static PlanBuilder site(String battery) {
    return PlanBuilder.site()
        .regime(NFPA72_HOUSEHOLD)
        .supply(
            "Main",
            supply ->
                supply
                    .voltage("13.7 V")
                    .rating("1000 mA")
                    .own("100 mA", "150 mA")
                    .charge("1000 mA")
                    .lowestTemperature("25 C")
                    .ageingFactor(1.25)
                    .battery(battery));
  }

  /**
   * NFPA 72 household, 24 h and 4 min: 0.1 A x 24 h + 0.15 A x 4/60 h = 2.41 Ah; x 1.25 = 3.0125
   * Ah.
   */
  @Test
  void findsABatteryBelowTheNeedAndPassesOneAboveIt() {
    assertThat(findings(rule, site("3 Ah")))
        .singleElement()
        .asString()
        .startsWith("error at supplies / Main / battery: The battery of 'Main' holds 3 Ah, and")
        .contains("nfpa72-household")
        .contains("for 24 h at rest and 4 min in alarm.");
    assertThat(findings(rule, site("7 Ah"))).isEmpty();
    assertThat(run(rule, site("7 Ah")).judgedCount()).isEqualTo(1);
  }

  @Test
  void doesNotPassABatteryWhileACurrentIsUnknown() {
    PlanBuilder plan = site("7 Ah").device("Siren", SIREN, device -> device.wired().supply("Main"));

    assertThat(findings(rule, plan)).isEmpty();
    assertThat(notAssessed(rule, plan))
        .singleElement()
        .asString()
        .startsWith(
            "devices / Siren: whether the battery of 'Main' is large enough; 2 facts missing");
  }

  @Test
  void findsABatteryTooSmallForWhatIsKnown() {
    PlanBuilder plan = site("2 Ah").device("Siren", SIREN, device -> device.wired().supply("Main"));

    assertThat(findings(rule, plan)).singleElement().asString().contains("needs at least");
  }

  @Test
  void doesNotAssessASiteWithoutSupply() {
    assertThat(notAssessed(rule, PlanBuilder.site()))
        .singleElement()
        .asString()
        .startsWith("supplies: standby batteries, since the plan has no supply");
  }
}
