package keenward.core.building.walking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import keenward.core.building.Building;
import keenward.core.building.coverage.DetectorViews;
import keenward.core.building.walking.WalkingMap.Search;
import keenward.core.plan.CoveragePattern;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.FloorBuilder;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.Point;
import keenward.core.plan.RoomUse;
import keenward.core.plan.SitePlan;
import keenward.core.plan.ZoneResponse;
import org.junit.jupiter.api.Test;

class WalkingMapTest {

  private static final double RADIUS = 0.25;

  @Test
  void walksStraightWhereNothingIsInTheWay() {
    WalkingRoute route =
        walk(floor -> floor.room("Hall", RoomUse.HALL, 0, 0, 10, 4), at(1, 1), at(9, 3));
    assertThat(route.metres()).isCloseTo(Math.hypot(8, 2), within(1e-9));
    assertThat(route.rooms()).containsExactly("Hall");
  }

  /** Round one corner of an L: two tangents and an arc of 90 degrees less what they turn. */
  @Test
  void turnsRoundACornerAtABodysHalfWidth() {
    WalkingRoute route =
        walk(
            floor ->
                floor.room(
                    "Hall",
                    RoomUse.HALL,
                    List.of(
                        new Point(0, 0),
                        new Point(10, 0),
                        new Point(10, 2),
                        new Point(2, 2),
                        new Point(2, 10),
                        new Point(0, 10))),
            at(1, 9),
            at(9, 1));
    // Corner at (2, 2): from (1, 9), 1 to its left and 7 above; symmetrical.
    double away = Math.hypot(1, 7);
    double tangent = Math.sqrt(away * away - RADIUS * RADIUS);
    double arc = 2 * Math.PI - (2 * Math.acos(RADIUS / away) + angleAtCorner());
    assertThat(route.metres())
        .isCloseTo(2 * tangent + RADIUS * arc, within(0.01))
        .isLessThanOrEqualTo(2 * tangent + RADIUS * arc + 1e-3);
  }

  /** Between the lines from the corner (2, 2) to (1, 9) and to (9, 1), on the side of the hall. */
  private static double angleAtCorner() {
    return Math.acos((-1 * 7 + 7 * -1) / 50.0);
  }

  @Test
  void goesThroughDoorsAndNamesThem() {
    Consumer<FloorBuilder> rooms =
        floor ->
            floor
                .room("Hall", RoomUse.HALL, 0, 0, 4, 4)
                .room("Store", RoomUse.STORE, 4, 0, 8, 4)
                .opening("Way", OpeningKind.DOOR, "Hall", "Store");
    WalkingRoute route = walk(rooms, at(1, 3), at(7, 3));
    assertThat(route.rooms()).containsExactly("Hall", "Store");
    assertThat(route.crossings())
        .singleElement()
        .extracting(each -> each.passage().name())
        .isEqualTo("Way");
    assertThat(route.metres()).isGreaterThan(6);
    assertThat(
            search(
                floor -> rooms.accept(floor.furniture("Crate", "1 m", 3.2, 0, 3.9, 3)),
                at(1, 3),
                at(7, 3)))
        .as("0.1 m between crate and wall")
        .isInstanceOf(Search.Blocked.class);
  }

  @Test
  void neitherWindowsNorHatchesAreWays() {
    for (OpeningKind kind :
        List.of(OpeningKind.WINDOW, OpeningKind.HATCH, OpeningKind.FIXED_WINDOW)) {
      assertThat(
              search(
                  floor ->
                      floor
                          .room("Hall", RoomUse.HALL, 0, 0, 4, 4)
                          .room("Store", RoomUse.STORE, 4, 0, 8, 4)
                          .opening("Way", kind, "Hall", "Store"),
                  at(1, 3),
                  at(7, 3)))
          .isInstanceOf(Search.Blocked.class);
    }
  }

  @Test
  void climbsAStairWhosePlaceIsKnown() {
    Search search = search(twoFloors(true), "Front door", "Keypad");
    WalkingRoute route = search.find().orElseThrow();
    assertThat(route.rooms()).containsExactly("Hall", "Landing");
    assertThat(route.stairMetres()).isEqualTo(3.6);
    // Door (0.95, 0) to (3, 3), and (1, 1) to (3, 1), with nothing in the way.
    assertThat(route.levelMetres()).isCloseTo(0.25 + Math.hypot(2.05, 2.75) + 2, within(0.01));
    assertThat(route.back().rooms()).containsExactly("Landing", "Hall");
    assertThat(route.back().metres()).isCloseTo(route.metres(), within(1e-9));
  }

  @Test
  void asksForThePlaceOfAStair() {
    assertThat(search(twoFloors(false), "Front door", "Keypad"))
        .isInstanceOfSatisfying(
            Search.Unknown.class,
            unknown ->
                assertThat(unknown.missing().message())
                    .isEqualTo(
                        "not assessed: walks over 'Stair'; add `at: [10.2, 1], ends at: [10.2, 4], run: 3.6 m`"));
  }

  private static SitePlan twoFloors(boolean placed) {
    return PlanBuilder.site()
        .floor(
            "Ground",
            floor -> {
              floor
                  .room("Hall", RoomUse.HALL, 0, 0, 4, 4)
                  .opening("Front door", OpeningKind.DOOR, "Hall", "outside", 1);
              if (placed) {
                floor.stair("Stair", "Hall", "Landing", new Point(3, 3), new Point(1, 1), "3.6 m");
              } else {
                floor.stair("Stair", "Hall", "Landing");
              }
            })
        .floor("Upper", floor -> floor.room("Landing", RoomUse.LANDING, 0, 0, 4, 4))
        .device("Keypad", DeviceKind.KEYPAD, device -> device.room("Landing").at(3, 1))
        .build();
  }

  private static Search search(SitePlan plan, String door, String keypad) {
    return WalkingMap.of(plan, Building.of(plan))
        .search(
            plan.openings().filter(each -> each.name().equals(door)).findFirst(),
            plan.findDevice(keypad).orElseThrow());
  }

  /** One looks to the east past the walk, one at the wall. */
  @Test
  void saysWhereADetectorSeesTheWalkerFirst() {
    SitePlan plan =
        PlanBuilder.site()
            .floor("Ground", floor -> floor.room("Hall", RoomUse.HALL, 0, 0, 10, 4))
            .device(
                "Eye",
                DeviceKind.MOTION,
                eye ->
                    eye.room("Hall")
                        .at(5, 2)
                        .bearing("90 deg")
                        .covers(CoveragePattern.FAN, "4 m", "60 deg"))
            .device(
                "Blind",
                DeviceKind.MOTION,
                eye ->
                    eye.room("Hall")
                        .at(9, 3.9)
                        .bearing("0 deg")
                        .covers(CoveragePattern.FAN, "1 m", "60 deg"))
            .zone(1, "Eye", ZoneResponse.INSTANT, zone -> zone.device("Eye"))
            .zone(2, "Blind", ZoneResponse.INSTANT, zone -> zone.device("Blind"))
            .build();
    Building building = Building.of(plan);
    WalkingRoute route =
        WalkingMap.of(plan, building).search(at(1, 1), at(9, 1)).find().orElseThrow();
    Sightings sightings = Sightings.of(plan, building, DetectorViews.of(plan, building));
    // The fan's lower edge leaves (5, 2) at 30 degrees below east: y = 1 at x = 5 + sqrt(3).
    assertThat(sightings.onWalk(route))
        .singleElement()
        .satisfies(sighting -> {
          assertThat(sighting.zone().number()).isEqualTo(1);
          assertThat(sighting.metres().orElseThrow()).isCloseTo(4 + Math.sqrt(3), within(0.01));
        });
  }

  @Test
  void breaksABeamWhereTheWalkCrossesIt() {
    SitePlan plan =
        PlanBuilder.site()
            .floor("Ground", floor -> floor.room("Hall", RoomUse.HALL, 0, 0, 10, 4))
            .device("Across", DeviceKind.BEAM, beam -> beam.room("Hall").at(5, 0.1).endsAt(7, 3.9))
            .device("Along", DeviceKind.BEAM, beam -> beam.room("Hall").at(0.1, 3).endsAt(9.9, 3))
            .zone(1, "Across", ZoneResponse.INSTANT, zone -> zone.device("Across"))
            .zone(2, "Along", ZoneResponse.INSTANT, zone -> zone.device("Along"))
            .build();
    Building building = Building.of(plan);
    WalkingRoute route =
        WalkingMap.of(plan, building).search(at(1, 1), at(9, 1)).find().orElseThrow();
    Sightings sightings = Sightings.of(plan, building, DetectorViews.of(plan, building));
    // The beam is at y = 1 after 0.9 of its 3.8 m across: x = 5 + 2 * 0.9 / 3.8.
    assertThat(sightings.onWalk(route))
        .singleElement()
        .satisfies(sighting -> {
          assertThat(sighting.zone().number()).isEqualTo(1);
          assertThat(sighting.how()).contains("beam 'Across'");
          assertThat(sighting.metres().orElseThrow()).isCloseTo(4 + 1.8 / 3.8, within(0.01));
        });
  }

  @Test
  void neverThrowsForWhatIsDrawn() {
    assertThat(
            search(floor -> floor.room("Hall", RoomUse.HALL, 0, 0, 0.4, 4), at(0.2, 1), at(0.2, 3)))
        .as("narrower than a body")
        .isInstanceOf(Search.Blocked.class);
    assertThat(search(floor -> floor.room("Hall", RoomUse.HALL, 0, 0, 4, 4), at(1e12, 1), at(1, 3)))
        .as("outside")
        .isInstanceOf(Search.Blocked.class);
    assertThat(
            search(
                floor -> floor.room("Hall", RoomUse.HALL, 0, 0, 4, 4), at(Double.NaN, 1), at(1, 3)))
        .as("no number")
        .isInstanceOf(Search.Blocked.class);
    assertThat(
            search(floor -> floor.room("Hall", RoomUse.HALL, 0, 0, 4, 4), at(1, 1), at(1, 1))
                .find()
                .orElseThrow()
                .metres())
        .as("nowhere")
        .isZero();
  }

  static Place at(double x, double y) {
    return new Place(x + " " + y, "Ground", Optional.empty(), new Point(x, y), Place.Kind.STAIR);
  }

  static WalkingRoute walk(Consumer<FloorBuilder> floor, Place from, Place to) {
    return search(floor, from, to).find().orElseThrow();
  }

  static Search search(Consumer<FloorBuilder> floor, Place from, Place to) {
    SitePlan plan = PlanBuilder.site().floor("Ground", floor).build();
    Building building = Building.of(plan);
    assertThat(building.problems()).isEmpty();
    return WalkingMap.of(plan, building).search(from, to);
  }
}
