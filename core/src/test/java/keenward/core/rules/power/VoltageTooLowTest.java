package keenward.core.rules.power;

import static keenward.core.plan.DeviceKind.SIREN;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class VoltageTooLowTest {

  private final VoltageTooLow rule = new VoltageTooLow();

  private static PlanBuilder site(String length) {
    return PlanBuilder.site()
        .supply("Main", supply -> supply.voltage("13.7 V").rating("1000 mA"))
        .device(
            "Siren",
            SIREN,
            device -> device.wired().draws("10 mA", "350 mA").worksFrom("10 V").supply("Main"))
        .cable("To siren", "Main", "Siren", length, "0.22 mm2");
  }

  /**
   * 10.5 V at the end of discharge; 0.22 mm2 has about 0.08 ohm/m, so 2 x 60 m x 0.08 ohm/m x 0.35
   * A is over 3 V.
   */
  @Test
  void findsASirenAtTheEndOfALongThinCable() {
    assertThat(findings(rule, site("60 m")))
        .singleElement()
        .asString()
        .startsWith("error at devices / Siren / minimum voltage: At 'Siren' ")
        .endsWith(
            "V arrive from 'Main' through 'To siren' at the end of discharge, and it needs 10 V.");
  }

  @Test
  void passesAShortCable() {
    assertThat(findings(rule, site("3 m"))).isEmpty();
    assertThat(run(rule, site("3 m")).judgedCount()).isEqualTo(1);
  }

  @Test
  void hasNothingToJudgeWithoutCables() {
    assertThat(run(rule, PlanBuilder.site()).judgedCount()).isZero();
  }
}
