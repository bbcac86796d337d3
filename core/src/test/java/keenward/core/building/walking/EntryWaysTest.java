package keenward.core.building.walking;

import static keenward.core.plan.DeviceKind.CONTACT;
import static keenward.core.plan.DeviceKind.KEYPAD;
import static keenward.core.plan.HabitAction.DISARM;
import static keenward.core.plan.OpeningKind.DOOR;
import static keenward.core.plan.OpeningKind.WINDOW;
import static keenward.core.plan.RoomUse.HALL;
import static keenward.core.plan.RoomUse.OFFICE;
import static keenward.core.plan.RoomUse.STORE;
import static keenward.core.plan.ZoneResponse.ENTRY_EXIT;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import keenward.core.building.Building;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.SitePlan;
import org.junit.jupiter.api.Test;

class EntryWaysTest {

  /**
   * Hall 0 to 3, office 3 to 6, store 6 to 9; doors Front, Hall-Office, Office-Store; keypads in
   * office and store.
   */
  private static PlanBuilder site() {
    return PlanBuilder.site()
        .floor(
            "Ground",
            floor ->
                floor
                    .room("Hall", HALL, 0, 0, 3, 4)
                    .room("Office", OFFICE, 3, 0, 6, 4)
                    .room("Store", STORE, 6, 0, 9, 4)
                    .opening("Front door", DOOR, "Hall", "outside", 1)
                    .opening("Office door", DOOR, "Hall", "Office")
                    .opening("Store door", DOOR, "Office", "Store")
                    .opening("Hatch", WINDOW, "Office", "Store"))
        .device("Front contact", CONTACT, device -> device.on("Front door"))
        .zone(1, "Front door", ENTRY_EXIT, zone -> zone.device("Front contact"));
  }

  private static EntryWays ways(PlanBuilder builder) {
    SitePlan plan = builder.build();
    return EntryWays.of(plan, WalkingMap.of(plan, Building.of(plan)));
  }

  @Test
  void takesTheNearestKeypadWithoutAHabit() {
    EntryWays ways =
        ways(
            site()
                .device("Office keypad", KEYPAD, device -> device.room("Office"))
                .device("Store keypad", KEYPAD, device -> device.room("Store")));

    assertThat(ways.ways())
        .singleElement()
        .satisfies(way -> {
          assertThat(way.start()).isEqualTo("Front door");
          assertThat(way.byHabit()).isFalse();
          assertThat(way.walks())
              .extracting(walk -> walk.keypad().name())
              .containsExactly("Office keypad");
          assertThat(way.walks().getFirst().route().rooms()).containsExactly("Hall", "Office");
        });
  }

  @Test
  void takesTheKeypadOfAHabit() {
    EntryWays ways =
        ways(
            site()
                .person("Bo", PlanBuilder.habit("in", DISARM, "Front door", "Store keypad"))
                .device("Office keypad", KEYPAD, device -> device.room("Office"))
                .device("Store keypad", KEYPAD, device -> device.room("Store")));

    assertThat(ways.ways().getFirst().byHabit()).isTrue();
    assertThat(ways.ways().getFirst().walks().getFirst().route().rooms())
        .containsExactly("Hall", "Office", "Store");
  }

  @Test
  void neverWalksOutsideAgainNorThroughAWindow() {
    EntryWays ways =
        ways(
            PlanBuilder.site()
                .floor(
                    "Ground",
                    floor ->
                        floor
                            .room("Hall", HALL, 0, 0, 3, 4)
                            .room("Store", STORE, 3, 0, 6, 4)
                            .opening("Front door", DOOR, "Hall", "outside", 1)
                            .opening("Yard door", DOOR, "Store", "outside", 1)
                            .opening("Pane", WINDOW, "Hall", "Store"))
                .device("Front contact", CONTACT, device -> device.on("Front door"))
                .device("Keypad", KEYPAD, device -> device.room("Store"))
                .zone(1, "Front", ENTRY_EXIT, zone -> zone.device("Front contact")));

    assertThat(ways.ways()).singleElement().satisfies(way -> assertThat(way.walks()).isEmpty());
  }

  @Test
  void startsAnInnerDoorOnItsNearerSide() {
    EntryWays ways =
        ways(
            site()
                .device("Store contact", CONTACT, device -> device.on("Store door"))
                .device("Store keypad", KEYPAD, device -> device.room("Store"))
                .zone(2, "Store door", ENTRY_EXIT, zone -> zone.device("Store contact")));

    assertThat(ways.ways().get(1).walks().getFirst().route().rooms()).containsExactly("Store");
  }

  @Test
  void serveOnlyTheirPartitions() {
    EntryWays ways =
        ways(
            site()
                .partition("Shop", 1, List.of("Store keypad"))
                .device("Office keypad", KEYPAD, device -> device.room("Office"))
                .device("Store keypad", KEYPAD, device -> device.room("Store")));

    assertThat(ways.ways().getFirst().walks())
        .extracting(walk -> walk.keypad().name())
        .containsExactly("Store keypad");
  }

  @Test
  void saysWhatThePlanLacks() {
    assertThat(ways(PlanBuilder.site().zone(1, "Door", ENTRY_EXIT)).notKnown())
        .extracting(MissingFact::why)
        .containsExactly("the ways in, since the plan has no rooms");
    assertThat(ways(site()).notKnown())
        .extracting(MissingFact::why)
        .containsExactly("the ways in, since the plan has no keypad");
    assertThat(ways(site().device("Keypad", KEYPAD)).notKnown())
        .extracting(MissingFact::lineToAdd)
        .containsExactly("room: Hall");
    assertThat(
            ways(site()
                    .device("Keypad", KEYPAD, device -> device.room("Hall"))
                    .zone(2, "Side", ENTRY_EXIT, zone -> zone.kind(CONTACT)))
                .notKnown())
        .extracting(fact -> fact.place().toString())
        .containsExactly("zones / 2 / device");
  }
}
