package keenward.core.rules.arming;

import static keenward.core.plan.ArmingMode.AWAY;
import static keenward.core.plan.ArmingMode.NIGHT;
import static keenward.core.plan.ArmingMode.STAY;
import static keenward.core.plan.DeviceKind.CURTAIN;
import static keenward.core.plan.DeviceKind.MOTION;
import static keenward.core.plan.RoomUse.BEDROOM;
import static keenward.core.plan.RoomUse.LIVING;
import static keenward.core.plan.RoomUse.STORE;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.plan.ZoneResponse.PERIMETER;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class OccupiedRoomLiveTest {

  private final OccupiedRoomLive rule = new OccupiedRoomLive();

  private static PlanBuilder home() {
    return PlanBuilder.site()
        .floor(
            "Ground",
            floor ->
                floor
                    .room("Living", LIVING, 0, 0, 5, 4)
                    .room("Bedroom", BEDROOM, 5, 0, 9, 4)
                    .room("Store", STORE, 0, 4, 9, 6))
        .device("Living motion", MOTION, device -> device.room("Living"))
        .device("Bedroom motion", MOTION, device -> device.room("Bedroom"))
        .device("Store motion", MOTION, device -> device.room("Store"))
        .device("Living curtain", CURTAIN, device -> device.room("Living"));
  }

  @Test
  void findsALivingRoomThatIsLiveInStay() {
    PlanBuilder plan =
        home().zone(2, "Living", INSTANT, zone -> zone.device("Living motion").liveIn(AWAY, STAY));

    assertThat(findings(rule, plan))
        .containsExactly(
            "error at zones / 2 / live in: Zone 2 'Living' is live in stay, and its motion detector sees"
                + " 'Living' (use living), where people are then.");
  }

  @Test
  void findsABedroomThatAPerimeterResponseKeepsLive() {
    PlanBuilder plan = home().zone(3, "Bed", PERIMETER, zone -> zone.device("Bedroom motion"));

    assertThat(findings(rule, plan))
        .singleElement()
        .asString()
        .startsWith("error at zones / 3 / response: Zone 3 'Bed' is live in stay and night");
  }

  @Test
  void passesARoomThatIsEmptyInThatMode() {
    PlanBuilder plan =
        home()
            .zone(1, "Living", INSTANT, zone -> zone.device("Living motion").liveIn(AWAY, NIGHT))
            .zone(2, "Store", INSTANT, zone -> zone.device("Store motion").liveIn(AWAY, STAY))
            .zone(3, "Bedroom", INSTANT, zone -> zone.device("Bedroom motion"))
            .zone(4, "Curtain", PERIMETER, zone -> zone.device("Living curtain"));

    assertThat(findings(rule, plan)).isEmpty();
    assertThat(run(rule, plan).judgedCount()).isEqualTo(3);
  }

  @Test
  void takesAReason() {
    PlanBuilder plan =
        home()
            .zone(
                2,
                "Living",
                INSTANT,
                zone -> zone.device("Living motion").liveIn(AWAY, STAY).reason("shut off in stay"));

    assertThat(findings(rule, plan)).isEmpty();
  }

  @Test
  void doesNotAssessADetectorWhoseRoomIsNotKnown() {
    PlanBuilder plan =
        PlanBuilder.site()
            .device("Eye", MOTION)
            .zone(1, "Hall", PERIMETER, zone -> zone.device("Eye"));

    assertThat(notAssessed(rule, plan))
        .singleElement()
        .asString()
        .startsWith("devices / Eye: ")
        .endsWith("in which room 'Eye' is; add: room: Hall");
    assertThat(run(rule, plan).judgedCount()).isZero();
  }
}
