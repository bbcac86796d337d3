package keenward.core.rules.records;

import static keenward.core.plan.DeviceKind.MOTION;
import static keenward.core.plan.DeviceKind.SMOKE;
import static keenward.core.plan.Standard.NFPA72_HOUSEHOLD;
import static keenward.core.rules.RuleCheck.lines;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import keenward.core.plan.PlanBuilder;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Report;
import org.junit.jupiter.api.Test;

class PastItsLifeTest {

  private final PastItsLife rule = new PastItsLife();

  private Report on(String day, PlanBuilder plan) {
    return run(rule, CheckInput.of(plan.build()).asOf(LocalDate.parse(day)));
  }

  private static PlanBuilder motion() {
    return PlanBuilder.site()
        .device(
            "Eye",
            MOTION,
            device -> device.replaceAfter("10 y").cellLife("3 y").fitted("2020-02-29"));
  }

  @Test
  void findsDeviceAndCellOnceTheirDayIsPast() {
    assertThat(lines(on("2023-02-28", motion()))).isEmpty();
    assertThat(lines(on("2023-03-01", motion())))
        .containsExactly(
            "warning at devices / Eye / fitted: The cell of 'Eye' was fitted on 2020-02-29 for 3 y: that"
                + " was over on 2023-02-28.");
    assertThat(lines(on("2030-03-01", motion())))
        .hasSize(2)
        .first()
        .asString()
        .startsWith(
            "warning at devices / Eye / fitted: Device 'Eye' was fitted on 2020-02-29 for 10 y");
  }

  /** NFPA 72, from memory: smoke detectors are replaced 10 years after manufacture. */
  @Test
  void givesASmokeDetectorTenYearsUnderTheHouseholdChapter() {
    PlanBuilder plan =
        PlanBuilder.site().device("Smoke", SMOKE, device -> device.fitted("2010-05-01"));
    assertThat(on("2026-01-01", plan).judgedCount()).isZero();
    assertThat(lines(on("2026-01-01", plan.regime(NFPA72_HOUSEHOLD)))).hasSize(1);
  }

  @Test
  void doesNotAssessWithoutADayOrADateOfFitting() {
    assertThat(notAssessed(rule, motion()))
        .containsExactly(
            "devices: the age of 1 device, since no day is given on which to judge it; add: --as-of YYYY-MM-DD");
    assertThat(
            notAssessed(
                rule, PlanBuilder.site().device("Eye", MOTION, device -> device.cellLife("3 y"))))
        .containsExactly(
            "devices / Eye: the age of 1 device, since the plan does not say when 'Eye' was fitted; add:"
                + " fitted: YYYY-MM-DD");
  }
}
