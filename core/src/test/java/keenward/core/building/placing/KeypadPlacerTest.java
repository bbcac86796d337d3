package keenward.core.building.placing;

import static keenward.core.plan.DeviceKind.CONTACT;
import static keenward.core.plan.DeviceKind.KEYPAD;
import static keenward.core.plan.DeviceKind.MOTION;
import static keenward.core.plan.OpeningKind.DOOR;
import static keenward.core.plan.RoomUse.HALL;
import static keenward.core.plan.ZoneResponse.ENTRY_EXIT;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import keenward.core.building.Building;
import keenward.core.building.coverage.DetectorViews;
import keenward.core.building.placing.KeypadPlacer.KeypadPlace;
import keenward.core.building.placing.KeypadPlacer.KeypadPlaces;
import keenward.core.building.walking.EntryWays;
import keenward.core.building.walking.Sightings;
import keenward.core.building.walking.WalkingMap;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.SitePlan;
import keenward.core.progress.Progress;
import org.junit.jupiter.api.Test;

class KeypadPlacerTest {

  /** A hall 20 m long with an entry door at either end, and a keypad at the south one. */
  private static PlanBuilder hall() {
    return PlanBuilder.site()
        .floor(
            "Ground",
            floor ->
                floor
                    .room("Hall", HALL, 0, 0, 3, 20)
                    .opening("South door", DOOR, "Hall", "outside", 1)
                    .opening("North door", DOOR, "Hall", "outside", 3))
        .device("South contact", CONTACT, device -> device.room("Hall").on("South door"))
        .device("North contact", CONTACT, device -> device.room("Hall").on("North door"))
        .device("Keypad", KEYPAD, device -> device.room("Hall").at(2.9, 1))
        .zone(1, "South", ENTRY_EXIT, zone -> zone.device("South contact"))
        .zone(2, "North", ENTRY_EXIT, zone -> zone.device("North contact"));
  }

  private static KeypadPlaces propose(PlanBuilder builder) {
    SitePlan plan = builder.build();
    Building building = Building.of(plan);
    WalkingMap map = WalkingMap.of(plan, building);
    return KeypadPlacer.propose(
        plan,
        map,
        EntryWays.of(plan, map),
        Sightings.of(plan, building, DetectorViews.of(plan, building)),
        Progress.SILENT);
  }

  @Test
  void standsHalfWayBetweenTwoDoors() {
    KeypadPlaces found = propose(hall());

    KeypadPlace place = found.places().getFirst();
    assertThat(place.at().yMetres()).isCloseTo(10, within(1.0));
    assertThat(place.seconds()).containsOnlyKeys("South door", "North door");
    assertThat(place.nowSeconds().orElseThrow()).isGreaterThan(place.mostSeconds() + 8);
    assertThat(found.none()).isEmpty();
  }

  @Test
  void findsNoneWhereEveryWalkAlarmsAtOnce() {
    KeypadPlaces found =
        propose(
            hall()
                .device("Motion", MOTION, device -> device.room("Hall"))
                .zone(3, "Hall", INSTANT, zone -> zone.device("Motion")));

    assertThat(found.places()).isEmpty();
    assertThat(found.none()).hasSize(1);
  }
}
