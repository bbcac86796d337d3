package keenward.core.rules.survey;

import static keenward.core.plan.CoveragePattern.FAN;
import static keenward.core.plan.DeviceKind.DUAL_MOTION;
import static keenward.core.plan.DeviceKind.MOTION;
import static keenward.core.plan.OpeningKind.ROLLER_SHUTTER;
import static keenward.core.plan.RoomUse.STORE;
import static keenward.core.plan.RoomUse.WORKSHOP;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.rules.RuleCheck.findings;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.DeviceKind;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

/** What the examples of the rules leave open. */
class FalseAlarmCausesTest {

  /** A store with a heater in its corner and a shutter in the middle of its east wall. */
  private static PlanBuilder site(DeviceKind kind, String beyond) {
    return PlanBuilder.site()
        .floor(
            "Ground",
            floor ->
                floor
                    .room("Store", STORE, 0, 0, 8, 6)
                    .room("Workshop", WORKSHOP, 8, 0, 12, 6)
                    .furniture("Heater", "1 m", 6, 4, 7, 5)
                    .warms("Heater")
                    .opening("Shutter", ROLLER_SHUTTER, "Store", beyond, 1))
        .device(
            "Eye",
            kind,
            eye -> eye.room("Store").at(4, 3).bearing("90 deg").covers(FAN, "12 m", "360 deg"))
        .zone(1, "Eye", INSTANT, zone -> zone.device("Eye"));
  }

  @Test
  void aDualDetectorDoesNotMindWarmth() {
    assertThat(findings(new WarmThingSeen(), site(MOTION, "outside"))).hasSize(1);
    assertThat(findings(new WarmThingSeen(), site(DUAL_MOTION, "outside"))).isEmpty();
  }

  @Test
  void windMovesNoShutterBetweenTwoRooms() {
    assertThat(findings(new MovingDoorSeen(), site(MOTION, "outside"))).hasSize(1);
    assertThat(findings(new MovingDoorSeen(), site(DUAL_MOTION, "outside"))).hasSize(1);
    assertThat(findings(new MovingDoorSeen(), site(MOTION, "Workshop"))).isEmpty();
  }
}
