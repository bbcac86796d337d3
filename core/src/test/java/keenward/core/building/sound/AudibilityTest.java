package keenward.core.building.sound;

import static keenward.core.plan.DeviceKind.SIREN;
import static keenward.core.plan.DeviceKind.SOUNDER;
import static keenward.core.plan.OpeningKind.DOOR;
import static keenward.core.plan.OpeningKind.DOORWAY;
import static keenward.core.plan.RoomUse.BEDROOM;
import static keenward.core.plan.RoomUse.LANDING;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import keenward.core.building.Building;
import keenward.core.building.walking.WalkingMap;
import keenward.core.plan.MissingFact;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.SitePlan;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AudibilityTest {

  /**
   * A landing of 6 m x 2 m and above it, over one wall, a bedroom of 6 m x 4 m; the opening between
   * them goes from x 0.5 m to 1.4 m.
   */
  private static PlanBuilder house(OpeningKind between) {
    return PlanBuilder.site()
        .floor(
            "Upper",
            floor ->
                floor
                    .room("Landing", LANDING, 0, 0, 6, 2)
                    .room("Bedroom", BEDROOM, 0, 2, 6, 6)
                    .opening("Way", between, "Bedroom", "Landing", 1));
  }

  private static Audibility of(PlanBuilder builder) {
    SitePlan plan = builder.build();
    return Audibility.of(plan, WalkingMap.of(plan, Building.of(plan)));
  }

  private static Optional<Heard> inBedroom(PlanBuilder builder) {
    SitePlan plan = builder.build();
    Building building = Building.of(plan);
    return Audibility.of(plan, WalkingMap.of(plan, building))
        .atQuietest(
            building.findFloor("Upper").flatMap(floor -> floor.findRoom("Bedroom")).orElseThrow());
  }

  /**
   * The inverse square law: 6 dB for each doubling of the distance, 20 dB for ten times (any
   * handbook of acoustics; from memory).
   */
  @ParameterizedTest
  @CsvSource({"95, 3, 3, 95", "95, 3, 6, 89", "95, 3, 12, 83", "100, 1, 10, 80", "85, 3, 1.5, 91"})
  void fallsWithTheSquareOfTheDistance(double level, double at, double metres, double expected) {
    assertThat(Losses.levelAt(level, at, metres)).isCloseTo(expected, within(0.1));
  }

  @Test
  void isHeardStraightInItsOwnRoom() {
    PlanBuilder house =
        house(DOOR)
            .device(
                "Sounder",
                SOUNDER,
                device -> device.room("Bedroom").at(0.1, 2.1).sounds("90 dB", "3 m"));

    Heard heard = inBedroom(house).orElseThrow();

    // The farthest corner is (6, 6); half a metre out of it towards the middle, the way is 6.5 m.
    assertThat(heard.metres()).isBetween(6.3, 6.7);
    assertThat(heard.through()).isEmpty();
    assertThat(heard.decibels()).isCloseTo(90 - 20 * Math.log10(heard.metres() / 3), within(1e-9));
  }

  @Test
  void loses20DecibelsAtAShutDoorAndNothingAtADoorway() {
    PlanBuilder shut =
        house(DOOR)
            .device(
                "Sounder",
                SOUNDER,
                device -> device.room("Landing").at(0.9, 0.1).sounds("100 dB", "3 m"));
    PlanBuilder open =
        house(DOORWAY)
            .device(
                "Sounder",
                SOUNDER,
                device -> device.room("Landing").at(0.9, 0.1).sounds("100 dB", "3 m"));

    Heard behindDoor = inBedroom(shut).orElseThrow();
    Heard behindDoorway = inBedroom(open).orElseThrow();

    assertThat(behindDoor.through()).containsExactly("'Way'");
    assertThat(behindDoor.decibels())
        .isCloseTo(80 - 20 * Math.log10(behindDoor.metres() / 3), within(1e-9));
    assertThat(behindDoorway.through()).isEmpty();
    assertThat(behindDoorway.decibels() - behindDoor.decibels()).isGreaterThan(15);
  }

  @Test
  void isLeftOutWhereThePlanDoesNotSayHowLoudOrWhere() {
    PlanBuilder house =
        house(DOOR)
            .device("Silent", SOUNDER, device -> device.room("Landing").at(3, 1))
            .device("Nowhere", SOUNDER, device -> device.sounds("90 dB", "3 m"))
            .device("Outside", SIREN, device -> device.room("Landing").at(3, 1));

    assertThat(of(house).notKnown())
        .extracting(MissingFact::why)
        .containsExactly(
            "the plan does not say how loud 'Silent' is",
            "the plan does not say where 'Nowhere' is");
    assertThat(inBedroom(house)).isEmpty();
  }
}
