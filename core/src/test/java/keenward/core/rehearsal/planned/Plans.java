package keenward.core.rehearsal.planned;

import java.util.List;
import java.util.Random;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.EdgeSelector;
import keenward.core.plan.Fact;
import keenward.core.plan.Habit;
import keenward.core.plan.HabitAction;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.RoomUse;
import keenward.core.plan.SitePlan;
import keenward.core.plan.TimeOfDay;
import keenward.core.plan.UserRole;
import keenward.core.plan.ZoneResponse;

/** Invented plans. */
final class Plans {

  private Plans() {}

  /**
   * A workshop with a flat above and a shared hall; the passage motion is instant, on the way in.
   */
  static SitePlan workshop() {
    return PlanBuilder.site("Chandler's loft")
        .floor(
            "Ground",
            floor ->
                floor
                    .room("Workshop", RoomUse.WORKSHOP, 0, 0, 8, 6)
                    .room("Passage", RoomUse.HALL, 8, 0, 12, 6)
                    .room("Hall", RoomUse.HALL, 12, 0, 15, 6)
                    .opening("Yard door", OpeningKind.DOOR, "Workshop", EdgeSelector.OUTSIDE)
                    .opening("Inner door", OpeningKind.DOOR, "Workshop", "Passage")
                    .opening("Street door", OpeningKind.DOOR, "Hall", EdgeSelector.OUTSIDE))
        .device("Yard contact", DeviceKind.CONTACT, d -> d.wired().room("Workshop").on("Yard door"))
        .device(
            "Inner contact", DeviceKind.CONTACT, d -> d.wired().room("Workshop").on("Inner door"))
        .device(
            "Street contact", DeviceKind.CONTACT, d -> d.radio("11").room("Hall").on("Street door"))
        .device("Passage eye", DeviceKind.MOTION, d -> d.wired().room("Passage"))
        .device("Workshop eye", DeviceKind.MOTION, d -> d.wired().room("Workshop"))
        .device("Loft smoke", DeviceKind.SMOKE, d -> d.radio("12").latching(true))
        .device("Passage keys", DeviceKind.KEYPAD, d -> d.bus().room("Passage"))
        .device("Loft keys", DeviceKind.KEYPAD, d -> d.bus())
        .device("Blue fob", DeviceKind.FOB, d -> d.radio("13"))
        .panel(panel ->
            panel
                .entryDelay(1, "30 s")
                .entryDelay(2, "45 s")
                .exitTime("50 s")
                .sounderTime("4 min")
                .abortWindow("20 s")
                .swingerLimit(3)
                .radioSupervision("2 h")
                .crossZone("40 s", 4, 5))
        .partition("Workshop", 1, List.of("Passage keys", "Blue fob"))
        .partition("Loft", 2, List.of("Loft keys"))
        .commonArea("Hall", 3, List.of("Workshop", "Loft"))
        .zone(
            1,
            "Yard door",
            ZoneResponse.ENTRY_EXIT,
            z -> z.in("Workshop").device("Yard contact").entryDelay(1))
        .zone(
            2,
            "Inner door",
            ZoneResponse.FOLLOWER,
            z -> z.in("Workshop").device("Inner contact").follows(1))
        .zone(3, "Passage", ZoneResponse.INSTANT, z -> z.in("Workshop").device("Passage eye"))
        .zone(4, "Workshop", ZoneResponse.FOLLOWER, z -> z.in("Workshop").device("Workshop eye"))
        .zone(
            5,
            "Loft stair",
            ZoneResponse.FOLLOWER,
            z ->
                z.in("Loft")
                    .kind(DeviceKind.MOTION)
                    .liveIn(ArmingMode.AWAY, ArmingMode.NIGHT)
                    .entryDelay(2))
        .zone(
            6,
            "Street door",
            ZoneResponse.ENTRY_EXIT,
            z -> z.in("Hall").device("Street contact").entryDelay(2))
        .zone(7, "Loft smoke", ZoneResponse.FIRE, z -> z.in("Loft").device("Loft smoke"))
        .zone(
            8,
            "Bench button",
            ZoneResponse.HOLD_UP,
            z -> z.in("Workshop").kind(DeviceKind.HOLD_UP_BUTTON))
        .zone(
            9,
            "Hatch",
            ZoneResponse.PERIMETER,
            z ->
                z.in("Workshop", "Loft")
                    .kind(DeviceKind.CONTACT)
                    .mayForceArm(true)
                    .mayBypass(false))
        .zone(
            10,
            "Freezer",
            ZoneResponse.TECHNICAL,
            z -> z.in("Loft").kind(DeviceKind.TEMPERATURE).restore(false))
        .user(1, "Rosa", UserRole.MASTER, List.of("Workshop", "Loft", "Hall"))
        .user(2, "Apprentice", UserRole.ARM_ONLY, List.of("Workshop"))
        .user(3, "Pressed", UserRole.DURESS, List.of("Workshop"))
        .user(4, "Fitter", UserRole.TECHNICIAN, List.of("Workshop", "Loft"))
        .person(
            "Rosa",
            habit("opens", HabitAction.DISARM, 7 * 60),
            habit("closes", HabitAction.ARM_AWAY, 18 * 60))
        .build();
  }

  private static Habit habit(String name, HabitAction action, int minute) {
    return new Habit(
        name,
        action,
        List.of(),
        Fact.of(new TimeOfDay(minute)),
        Fact.of("Yard door"),
        Fact.of("Passage keys"),
        Fact.missing());
  }

  /** Three zones and nothing else. */
  static SitePlan threeZones() {
    return PlanBuilder.site("Kiosk")
        .zone(1, "Door", ZoneResponse.ENTRY_EXIT)
        .zone(2, "Inside", ZoneResponse.FOLLOWER)
        .zone(3, "Button", ZoneResponse.HOLD_UP)
        .build();
  }

  /** Zones, partitions and users at random, with names that are awkward in a script. */
  static SitePlan random(Random random) {
    String[] names = {"Door", "door", "He said \"no\"", "#5", "zone 3", "Fenêtre", "a  b", ""};
    ZoneResponse[] responses = ZoneResponse.values();
    UserRole[] roles = UserRole.values();
    PlanBuilder plan = PlanBuilder.site();
    int partitions = random.nextInt(4);
    for (int number = 1; number <= partitions; number++) {
      plan.partition("P" + number, number);
    }
    if (partitions >= 2 && random.nextBoolean()) {
      plan.commonArea("Common", 9, List.of("P1", "P2"));
    }
    int zones = random.nextInt(12);
    for (int number = 1; number <= zones; number++) {
      String name = names[random.nextInt(names.length)];
      plan.zone(
          number,
          name,
          responses[random.nextInt(responses.length)],
          zone -> {
            if (partitions >= 2 && random.nextInt(4) == 0) {
              zone.in("P1", "P2");
            }
            if (random.nextInt(4) == 0) {
              zone.entryDelay(1 + random.nextInt(3));
            }
          });
    }
    int users = random.nextInt(4);
    for (int number = 1; number <= users; number++) {
      plan.user(number, names[random.nextInt(names.length)], roles[random.nextInt(roles.length)]);
    }
    if (random.nextBoolean()) {
      plan.device("Keys \"A\"", DeviceKind.KEYPAD);
    }
    return plan.build();
  }
}
