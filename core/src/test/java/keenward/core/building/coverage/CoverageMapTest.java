package keenward.core.building.coverage;

import static keenward.core.plan.CoveragePattern.CEILING;
import static keenward.core.plan.CoveragePattern.FAN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Consumer;
import keenward.core.building.Building;
import keenward.core.building.plane.SeenArea;
import keenward.core.plan.DeviceBuilder;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.FloorBuilder;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.Point;
import keenward.core.plan.RoomUse;
import keenward.core.plan.SitePlan;
import keenward.core.plan.ZoneResponse;
import org.junit.jupiter.api.Test;

class CoverageMapTest {

  private static final List<Point> RING_ROUND_ISLAND =
      List.of(
          new Point(0, 0),
          new Point(10, 0),
          new Point(10, 10),
          new Point(0, 10),
          new Point(0, 0),
          new Point(4, 4),
          new Point(4, 6),
          new Point(6, 6),
          new Point(6, 4),
          new Point(4, 4));

  @Test
  void watchesAWholeRoomFromItsCorner() {
    CoverageMap map =
        map(
            floor -> floor.room("Hall", RoomUse.HALL, 0, 0, 6, 4),
            eye -> eye.at(0, 0).bearing("45 deg").covers(FAN, "12 m", "90 deg"));
    RoomCoverage hall = hall(map);
    assertThat(hall.floorSquareMetres()).isCloseTo(24, within(1e-9));
    // The eye stands some 3 cm off both walls and sees a quarter turn: two thin strips stay dark.
    assertThat(hall.share()).isBetween(0.98, 0.99);
    assertThat(hall.gaps()).isEmpty();
    assertThat(hall.seenTwiceSquareMetres()).isZero();
    assertThat(hall.detectors()).containsExactly("Eye");
  }

  @Test
  void bearingsTurnToTheRightFromNorth() {
    CoverageMap map =
        map(
            floor -> floor.room("Hall", RoomUse.HALL, 0, 0, 20, 20),
            eye -> eye.at(10, 10).bearing("90 deg").covers(FAN, "5 m", "60 deg"));
    SeenArea seen = map.findView("Eye").orElseThrow().seen();
    assertThat(seen.sees(new Point(14, 10))).as("east").isTrue();
    assertThat(seen.sees(new Point(10, 14))).as("north").isFalse();
    // 1/2 r^2 a: a sector of 5 m and 60 degrees.
    assertThat(hall(map).seenSquareMetres()).isCloseTo(25 * Math.PI / 6, within(0.05));
  }

  @Test
  void doesNotSeeThroughWallsClosedDoorsOrGlassButThroughADoorway() {
    assertThat(seenBeyond(OpeningKind.DOOR)).isZero();
    assertThat(seenBeyond(OpeningKind.FIXED_WINDOW)).isZero();
    assertThat(seenBeyond(OpeningKind.DOORWAY)).isGreaterThan(1);
  }

  private static double seenBeyond(OpeningKind kind) {
    CoverageMap map =
        map(
            floor ->
                floor
                    .room("Hall", RoomUse.HALL, 0, 0, 4, 4)
                    .room("Store", RoomUse.STORE, 4, 0, 8, 4)
                    .opening("Way", kind, "Hall", "Store"),
            eye -> eye.at(0.1, 0.9).bearing("90 deg").covers(FAN, "12 m", "90 deg"));
    return map.floors().getFirst().rooms().get(1).seenSquareMetres();
  }

  @Test
  void tallThingsHideAndLowOnesDoNotButNobodyStandsOnEither() {
    RoomCoverage low = hall(withThing("0.9 m"));
    RoomCoverage tall = hall(withThing("1.8 m"));
    assertThat(low.floorSquareMetres()).isCloseTo(96, within(1e-9));
    // Dark are just the strips of 0.1 m behind the eye, along two walls.
    assertThat(low.seenSquareMetres()).isCloseTo(96 - 0.1 * (10 + 9.9), within(1e-6));
    assertThat(tall.floorSquareMetres()).isCloseTo(96, within(1e-9));
    assertThat(tall.share()).isLessThan(0.9);
    assertThat(tall.gaps()).hasSize(1);
    // All that is dark but the strips; opening the shape by half a body rounds its corners off.
    double dark = 96 - tall.seenSquareMetres() - 0.1 * (10 + 9.9);
    assertThat(tall.gaps().getFirst().squareMetres()).isCloseTo(dark, within(0.2));
  }

  private static CoverageMap withThing(String height) {
    return map(
        floor ->
            floor.room("Hall", RoomUse.HALL, 0, 0, 10, 10).furniture("Thing", height, 4, 4, 6, 6),
        eye -> eye.at(0.1, 0.1).bearing("45 deg").covers(FAN, "20 m", "90 deg"));
  }

  @Test
  void looksPastAnIslandRoomOnBothSidesAndNotIntoIt() {
    CoverageMap map =
        map(
            floor ->
                floor
                    .room("Hall", RoomUse.HALL, RING_ROUND_ISLAND)
                    .room("Desk", RoomUse.OFFICE, 4, 4, 6, 6),
            eye -> eye.at(5, 0.1).covers(CEILING, "30 m", "360 deg"));
    RoomCoverage hall = hall(map);
    assertThat(hall.floorSquareMetres()).isCloseTo(96, within(1e-9));
    // The shadow of the near face, 3.9 m off, widens from 2 m to 2 * 9.9 / 3.9 m at the far wall.
    double shadow = (2 + 2 * 9.9 / 3.9) / 2 * 6 - 4;
    assertThat(hall.seenSquareMetres()).isCloseTo(96 - shadow, within(0.01));
    assertThat(map.floors().getFirst().rooms().get(1).isWatched()).isFalse();
  }

  @Test
  void countsWhatTwoDetectorsSeeOnceAndTwice() {
    PlanBuilder plan =
        plan(
            floor -> floor.room("Hall", RoomUse.HALL, 0, 0, 10, 10),
            eye -> eye.at(5, 5).covers(CEILING, "2 m", "360 deg"));
    plan.device(
            "Second",
            DeviceKind.MOTION,
            eye -> eye.room("Hall").at(5, 5).covers(CEILING, "3 m", "360 deg"))
        .zone(2, "Second", ZoneResponse.FOLLOWER, zone -> zone.device("Second"));
    RoomCoverage hall = hall(map(plan));
    assertThat(hall.seenSquareMetres()).isCloseTo(9 * Math.PI, within(0.2));
    assertThat(hall.seenTwiceSquareMetres()).isCloseTo(4 * Math.PI, within(0.2));
  }

  @Test
  void saysBetweenWhichDoorsAPersonCanCrossUnseen() {
    Consumer<FloorBuilder> room =
        floor ->
            floor
                .room("Hall", RoomUse.HALL, 0, 0, 10, 4)
                .room("Store", RoomUse.STORE, 0, 4, 10, 8)
                .opening("Street door", OpeningKind.DOOR, "Hall", "outside", 1)
                .opening("Store door", OpeningKind.DOOR, "Hall", "Store");
    // Both doors are at the west end or its far side; this eye looks at the east end only.
    RoomCoverage blind =
        hall(map(room, eye -> eye.at(9.9, 2).bearing("90 deg").covers(FAN, "3 m", "90 deg")));
    assertThat(blind.gaps()).hasSize(1);
    assertThat(blind.gaps().getFirst().reaches()).containsExactly("Street door", "Store door");
    assertThat(blind.gaps().getFirst().canBeCrossed()).isTrue();
    RoomCoverage seen =
        hall(map(room, eye -> eye.at(0.1, 2).bearing("90 deg").covers(FAN, "12 m", "178 deg")));
    assertThat(seen.gaps()).noneMatch(Gap::canBeCrossed);
  }

  @Test
  void saysWhichLineIsMissing() {
    Consumer<FloorBuilder> room = floor -> floor.room("Hall", RoomUse.HALL, 0, 0, 4, 4);
    assertThat(missing(room, eye -> eye.room("Hall"))).startsWith("at:");
    assertThat(missing(room, eye -> eye.at(1, 1))).startsWith("coverage:");
    assertThat(missing(room, eye -> eye.at(1, 1).covers(FAN, "12 m", "90 deg")))
        .startsWith("bearing:");
    assertThat(missing(room, eye -> eye.at(40, 40).bearing("0 deg").covers(FAN, "9 m", "9 deg")))
        .startsWith("at:");
  }

  private static String missing(Consumer<FloorBuilder> floor, Consumer<DeviceBuilder> eye) {
    CoverageMap map = map(floor, eye);
    assertThat(map.views()).isEmpty();
    assertThat(map.notAssessed()).hasSize(1);
    return map.notAssessed().getFirst().lineToAdd();
  }

  @Test
  void leavesOutADetectorThatNoZoneWatches() {
    PlanBuilder plan =
        PlanBuilder.site()
            .floor("Ground", floor -> floor.room("Hall", RoomUse.HALL, 0, 0, 4, 4))
            .device(
                "Eye",
                DeviceKind.MOTION,
                eye -> eye.room("Hall").at(2, 2).covers(CEILING, "9 m", "360 deg"));
    assertThat(map(plan).views()).isEmpty();
  }

  private static CoverageMap map(Consumer<FloorBuilder> floor, Consumer<DeviceBuilder> eye) {
    return map(plan(floor, eye));
  }

  private static PlanBuilder plan(Consumer<FloorBuilder> floor, Consumer<DeviceBuilder> eye) {
    return PlanBuilder.site()
        .floor("Ground", floor)
        .device("Eye", DeviceKind.MOTION, device -> eye.accept(device.room("Hall")))
        .zone(1, "Eye", ZoneResponse.FOLLOWER, zone -> zone.device("Eye"));
  }

  private static CoverageMap map(PlanBuilder builder) {
    SitePlan plan = builder.build();
    Building building = Building.of(plan);
    assertThat(building.problems().stream().filter(each -> !each.what().contains("Eye"))).isEmpty();
    return CoverageMap.of(plan, building);
  }

  private static RoomCoverage hall(CoverageMap map) {
    return map.floors().getFirst().rooms().getFirst();
  }
}
