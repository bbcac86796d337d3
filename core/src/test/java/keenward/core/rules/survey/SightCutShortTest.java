package keenward.core.rules.survey;

import static keenward.core.plan.CoveragePattern.FAN;
import static keenward.core.plan.DeviceKind.MOTION;
import static keenward.core.plan.RoomUse.STORE;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.rules.RuleCheck.findings;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SightCutShortTest {

  /**
   * From (5, 0.02), clear of the south wall, a fan of 90 degrees. It looks along the wall: below
   * the horizontal, rays meet the wall within 1 m where they fall by more than asin(0.02) = 1.1
   * degrees.
   */
  @ParameterizedTest
  @CsvSource({"0 deg, 0", "90 deg, 49", "100 deg, 60", "75 deg, 0", "76 deg, 0"})
  void measuresTheShareOfTheAngleThatEndsWithinAMetre(String bearing, int percent) {
    PlanBuilder plan =
        PlanBuilder.site()
            .floor("Ground", floor -> floor.room("Store", STORE, 0, 0, 10, 8))
            .device(
                "Motion",
                MOTION,
                device ->
                    device.room("Store").at(5, 0).bearing(bearing).covers(FAN, "12 m", "90 deg"))
            .zone(1, "Store", INSTANT, zone -> zone.device("Motion"));

    if (percent == 0) {
      assertThat(findings(new SightCutShort(), plan)).isEmpty();
    } else {
      assertThat(findings(new SightCutShort(), plan))
          .containsExactly(
              "warning at devices / Motion: Of the opening angle of 'Motion', "
                  + percent
                  + " % ends within 1 m.");
    }
  }
}
