package keenward.core.rules.fire;

import static keenward.core.plan.DeviceKind.CARBON_MONOXIDE_DETECTOR;
import static keenward.core.plan.OpeningKind.DOOR;
import static keenward.core.plan.RoomUse.BEDROOM;
import static keenward.core.plan.RoomUse.GARAGE;
import static keenward.core.plan.RoomUse.HALL;
import static keenward.core.plan.RoomUse.PLANT;
import static keenward.core.plan.RoomUse.STORE;
import static keenward.core.plan.Standard.NFPA72_HOUSEHOLD;
import static keenward.core.plan.ZoneResponse.CARBON_MONOXIDE;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import keenward.core.plan.RoomUse;
import org.junit.jupiter.api.Test;

class CarbonMonoxideDetectorMissingTest {

  private final CarbonMonoxideDetectorMissing rule = new CarbonMonoxideDetectorMissing();

  private static PlanBuilder house(RoomUse source) {
    return PlanBuilder.site()
        .floor(
            "Ground",
            floor ->
                floor
                    .room("Hall", HALL, 0, 0, 2, 4)
                    .room("Bedroom", BEDROOM, 2, 0, 5, 4)
                    .room("Annex", source, 0, 4, 5, 8)
                    .opening("Bedroom door", DOOR, "Bedroom", "Hall"));
  }

  @Test
  void findsABedroomNearAGarageOrPlantRoom() {
    assertThat(findings(rule, house(GARAGE).regime(NFPA72_HOUSEHOLD)))
        .containsExactly(
            "error at floors / Ground / rooms / Bedroom: The building has a garage, and no carbon"
                + " monoxide detector is in or outside bedroom 'Bedroom'.");
    assertThat(findings(rule, house(PLANT).regime(NFPA72_HOUSEHOLD)))
        .singleElement()
        .asString()
        .startsWith("warning at floors / Ground / rooms / Bedroom: The building has a plant room");
  }

  @Test
  void passesADetectorOutsideTheDoor() {
    PlanBuilder plan =
        house(GARAGE)
            .regime(NFPA72_HOUSEHOLD)
            .device("Hall gas", CARBON_MONOXIDE_DETECTOR, device -> device.room("Hall"))
            .zone(1, "Hall gas", CARBON_MONOXIDE, zone -> zone.device("Hall gas"));

    assertThat(findings(rule, plan)).isEmpty();
    assertThat(run(rule, plan).judgedCount()).isEqualTo(1);
  }

  @Test
  void hasNothingToJudgeWithoutASource() {
    assertThat(run(rule, house(STORE).regime(NFPA72_HOUSEHOLD)).judgedCount()).isZero();
  }

  @Test
  void doesNotAssessWithoutTheRegime() {
    assertThat(notAssessed(rule, house(GARAGE))).hasSize(1);
  }
}
