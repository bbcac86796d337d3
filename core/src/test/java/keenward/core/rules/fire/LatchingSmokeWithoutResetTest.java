package keenward.core.rules.fire;

import static keenward.core.plan.DeviceKind.SMOKE;
import static keenward.core.plan.ZoneResponse.FIRE;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.DeviceBuilder;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class LatchingSmokeWithoutResetTest {

  private final LatchingSmokeWithoutReset rule = new LatchingSmokeWithoutReset();

  private static PlanBuilder smoke(boolean latching) {
    return PlanBuilder.site()
        .device("Smoke", SMOKE, device -> device.wired().latching(latching))
        .zone(4, "Store", FIRE, zone -> zone.device("Smoke"));
  }

  @Test
  void findsALatchingDetectorOnAnOutputThatNoResetSwitches() {
    PlanBuilder plan = smoke(true).supply("Main", supply -> supply.resetsSmokeDetectors(false));

    assertThat(findings(rule, plan))
        .containsExactly(
            "error at devices / Smoke / supply: Smoke detector 'Smoke' latches, and a reset does not switch"
                + " the output of 'Main', which feeds it.");
    assertThat(run(rule, plan).findings().getFirst().involved().zones()).containsExactly(4);
  }

  @Test
  void passesASwitchedOutputAndADetectorThatLetsGo() {
    PlanBuilder reset = smoke(true).supply("Main", supply -> supply.resetsSmokeDetectors(true));
    PlanBuilder letsGo = smoke(false).supply("Main", supply -> supply.resetsSmokeDetectors(false));

    assertThat(findings(rule, reset)).isEmpty();
    assertThat(findings(rule, letsGo)).isEmpty();
    assertThat(run(rule, reset).judgedCount()).isEqualTo(1);
  }

  @Test
  void leavesRadioDetectorsAlone() {
    PlanBuilder plan = PlanBuilder.site().device("Smoke", SMOKE, device -> device.radio("1"));

    assertThat(run(rule, plan).judgedCount()).isZero();
    assertThat(notAssessed(rule, plan)).isEmpty();
  }

  @Test
  void doesNotAssessWithoutLatchingSupplyOrItsReset() {
    assertThat(notAssessed(rule, PlanBuilder.site().device("Smoke", SMOKE, DeviceBuilder::wired)))
        .singleElement()
        .asString()
        .endsWith("add: latching: no");
    assertThat(notAssessed(rule, smoke(true)))
        .singleElement()
        .asString()
        .endsWith("add: supply: Main");
    assertThat(notAssessed(rule, smoke(true).supply("Main", supply -> supply.rating("1 A"))))
        .singleElement()
        .asString()
        .startsWith("supplies / Main: ")
        .endsWith("add: resets smoke detectors: yes");
  }
}
