package keenward.core.rules.wireless;

import static keenward.core.plan.DeviceKind.FOB;
import static keenward.core.plan.DeviceKind.MOTION;
import static keenward.core.plan.Standard.CP_01;
import static keenward.core.plan.Standard.EN50131;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.DeviceBuilder;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Longest silence by grade: EN 50131-5-3, from memory: 240 min, 120 min, 100 s, 10 s. */
class RadioSilenceTooLongTest {

  private final RadioSilenceTooLong rule = new RadioSilenceTooLong();

  private static PlanBuilder site(String period) {
    return PlanBuilder.site()
        .device("Motion", MOTION, device -> device.radio("1"))
        .panel(panel -> panel.radioSupervision(period));
  }

  @ParameterizedTest
  @CsvSource({"1, 240 min, 241 min", "2, 120 min, 121 min", "3, 100 s, 101 s", "4, 10 s, 11 s"})
  void allowsWhatTheGradeDoesAndNoMore(int grade, String longest, String tooLong) {
    assertThat(findings(rule, site(longest).grade(EN50131, grade))).isEmpty();
    assertThat(findings(rule, site(tooLong).grade(EN50131, grade))).hasSize(1);
  }

  @Test
  void saysBothFigures() {
    assertThat(findings(rule, site("24 h").grade(EN50131, 2)))
        .containsExactly(
            "error at panel / radio supervision: 1 radio detector may be silent for 24 h; en50131 grade"
                + " 2 allows at most 2 h.");
  }

  @Test
  void findsSupervisionSwitchedOffUnderAnyRegime() {
    assertThat(findings(rule, site("0 s").regime(CP_01)))
        .containsExactly(
            "error at panel / radio supervision: 1 radio detector may be silent for ever: supervision is off.");
    assertThat(findings(rule, site("24 h").regime(CP_01))).isEmpty();
  }

  @Test
  void doesNotAssessAnUnsaidPeriodAndIgnoresASiteWithoutRadioDetectors() {
    PlanBuilder plan = PlanBuilder.site().device("Motion", MOTION, device -> device.radio("1"));
    assertThat(notAssessed(rule, plan))
        .containsExactly(
            "panel / radio supervision: how long 1 radio detector may be silent, since the plan does not"
                + " say; add: radio supervision: 2 h");
    assertThat(run(rule, PlanBuilder.site().device("Fob", FOB, DeviceBuilder::radio)).notAssessed())
        .isEmpty();
  }
}
