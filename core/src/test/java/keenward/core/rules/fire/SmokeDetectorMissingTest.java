package keenward.core.rules.fire;

import static keenward.core.plan.DeviceKind.SMOKE;
import static keenward.core.plan.OpeningKind.DOOR;
import static keenward.core.plan.RoomUse.BEDROOM;
import static keenward.core.plan.RoomUse.LANDING;
import static keenward.core.plan.RoomUse.LIVING;
import static keenward.core.plan.Standard.NFPA72_HOUSEHOLD;
import static keenward.core.plan.ZoneResponse.FIRE;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

/**
 * NFPA 72 (2010) chapter 29: in every sleeping room, outside each sleeping area, on every level.
 */
class SmokeDetectorMissingTest {

  private final SmokeDetectorMissing rule = new SmokeDetectorMissing();

  private static PlanBuilder house() {
    return PlanBuilder.site()
        .floor("Ground", floor -> floor.room("Living", LIVING, 0, 0, 5, 4))
        .floor(
            "Upper",
            floor ->
                floor
                    .room("Landing", LANDING, 0, 0, 2, 4)
                    .room("Bedroom", BEDROOM, 2, 0, 5, 4)
                    .opening("Bedroom door", DOOR, "Landing", "Bedroom"));
  }

  private static PlanBuilder smoke(PlanBuilder plan, int number, String room) {
    return plan.device(room + " smoke", SMOKE, device -> device.room(room))
        .zone(number, room, FIRE, zone -> zone.device(room + " smoke"));
  }

  @Test
  void findsBedroomLandingAndLevelWithoutOne() {
    assertThat(findings(rule, house().regime(NFPA72_HOUSEHOLD)))
        .containsExactly(
            "error at floors / Ground: Level 'Ground' has no smoke detector.",
            "error at floors / Upper / rooms / Bedroom: Bedroom 'Bedroom' has no smoke detector.",
            "error at floors / Upper / rooms / Bedroom: No smoke detector is outside the door of bedroom"
                + " 'Bedroom', in 'Landing'.");
  }

  @Test
  void passesAHouseWithAllThree() {
    PlanBuilder plan = house().regime(NFPA72_HOUSEHOLD);
    smoke(plan, 1, "Living");
    smoke(plan, 2, "Landing");
    smoke(plan, 3, "Bedroom");

    assertThat(findings(rule, plan)).isEmpty();
    assertThat(run(rule, plan).judgedCount()).isEqualTo(3);
  }

  @Test
  void countsNoDetectorBehindABurglaryZone() {
    PlanBuilder plan = house().regime(NFPA72_HOUSEHOLD);
    smoke(plan, 1, "Living");
    smoke(plan, 2, "Landing");
    plan.device("Bed smoke", SMOKE, device -> device.room("Bedroom"))
        .zone(3, "Bed", INSTANT, zone -> zone.device("Bed smoke"));

    assertThat(findings(rule, plan)).hasSize(1);
  }

  @Test
  void doesNotAssessWithoutTheRegimeTheRoomsOrTheirPlaces() {
    assertThat(notAssessed(rule, house()))
        .singleElement()
        .asString()
        .endsWith("add: regime: [nfpa72-household]");
    assertThat(notAssessed(rule, PlanBuilder.site().regime(NFPA72_HOUSEHOLD))).hasSize(1);
    assertThat(
            notAssessed(
                rule,
                house().regime(NFPA72_HOUSEHOLD).zone(1, "Smoke", FIRE, zone -> zone.kind(SMOKE))))
        .singleElement()
        .asString()
        .contains("does not give the room of each");
    assertThat(run(rule, PlanBuilder.site()).notAssessed()).isEmpty();
  }
}
