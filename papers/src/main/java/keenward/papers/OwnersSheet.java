package keenward.papers;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Monitoring;
import keenward.core.plan.Opening;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.Partition;
import keenward.core.plan.Setting;
import keenward.core.plan.Settings;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneResponse;

/** One page in plain words for the people of the building. */
final class OwnersSheet {

  private static final int FIRST_DELAY = 1;

  private final PapersInput input;
  private final SitePlan plan;

  private OwnersSheet(PapersInput input) {
    this.input = input;
    plan = input.plan();
  }

  static Sheet of(PapersInput input) {
    return new OwnersSheet(input).sheet();
  }

  private Sheet sheet() {
    View view =
        new View()
            .views("areas", plan.hasPartitions() ? areas() : List.of())
            .texts(
                "keypads",
                plan.devicesOf(DeviceKind.KEYPAD)
                    .map(device ->
                        device.name()
                            + device
                                .room()
                                .find()
                                .filter(room -> !device.name().contains(room))
                                .map(room -> " (" + room + ")")
                                .orElse(""))
                    .toList())
            .text("exit-time", input.settings().get(Setting.EXIT_TIME).words())
            .views("ways-in", waysIn())
            .texts("not-doors", doorsNotToUse())
            .texts("watched-away", watched(ArmingMode.AWAY))
            .texts("watched-stay", watched(ArmingMode.STAY))
            .text("abort", abort())
            .flag("fire", has(ZoneResponse.FIRE))
            .flag("gas", has(ZoneResponse.CARBON_MONOXIDE))
            .text("company", Say.factOrBlank(plan.site().company()))
            .text("phone", Say.factOrBlank(plan.site().contact()))
            .flag("monitored", plan.monitoring().isGiven())
            .text("centre", monitoring(Monitoring::centre))
            .text("centre-phone", monitoring(Monitoring::phone))
            .views("missing", missing());
    return Sheet.of("owners-page", "How to live with this alarm", "people of the building", view);
  }

  private List<View> areas() {
    List<View> views = new ArrayList<>();
    for (Partition partition : plan.partitions()) {
      views.add(
          new View()
              .text("name", partition.name())
              .text("keypads", Say.and(partition.keypads()))
              .text("common", Say.and(partition.commonTo())));
    }
    return views;
  }

  private List<View> waysIn() {
    List<View> views = new ArrayList<>();
    for (Zone zone : plan.zones()) {
      if (zone.response() == ZoneResponse.ENTRY_EXIT) {
        int delay = zone.entryDelay().orElse(FIRST_DELAY);
        views.add(
            new View()
                .text("door", door(zone))
                .text(
                    "time",
                    input
                        .settings()
                        .findEntryDelay(delay)
                        .map(Settings.Resolved::words)
                        .orElse(Say.UNKNOWN)));
      }
    }
    return views;
  }

  private String door(Zone zone) {
    List<String> openings =
        new ZoneWords(plan, zone).openings().stream().map(Opening::name).toList();
    return openings.isEmpty() ? zone.name() : Say.and(openings);
  }

  /** Doors to the outside that alarm at once when opened while the system is set. */
  private List<String> doorsNotToUse() {
    Set<String> doors = new LinkedHashSet<>();
    for (Zone zone : plan.zones()) {
      if (zone.response() == ZoneResponse.PERIMETER || zone.response() == ZoneResponse.INSTANT) {
        new ZoneWords(plan, zone)
            .openings().stream()
                .filter(opening -> isWalkedThrough(opening.kind()))
                .map(Opening::name)
                .forEach(doors::add);
      }
    }
    return List.copyOf(doors);
  }

  private static boolean isWalkedThrough(OpeningKind kind) {
    return switch (kind) {
      case DOOR, DOUBLE_DOOR, SLIDING_DOOR, DOORWAY, ROLLER_SHUTTER, GATE, HATCH -> true;
      case WINDOW, FIXED_WINDOW, ROOF_WINDOW -> false;
    };
  }

  /** Rooms that see somebody walk in a mode. */
  private List<String> watched(ArmingMode mode) {
    Set<String> rooms = new LinkedHashSet<>();
    for (Zone zone : plan.zones()) {
      if (!zone.response().isAlwaysLive() && zone.liveModes().contains(mode)) {
        new ZoneWords(plan, zone)
            .fitted()
            .filter(each -> seesPeople(each.kind()))
            .flatMap(each -> each.device().room().find().stream())
            .forEach(rooms::add);
      }
    }
    return List.copyOf(rooms);
  }

  private static boolean seesPeople(DeviceKind kind) {
    return kind == DeviceKind.MOTION || kind == DeviceKind.DUAL_MOTION;
  }

  private String abort() {
    Settings.Resolved window = input.settings().get(Setting.ABORT_WINDOW);
    return window.value() > 0 ? window.words() : "";
  }

  private boolean has(ZoneResponse response) {
    return plan.zones().stream().anyMatch(zone -> zone.response() == response);
  }

  private String monitoring(
      java.util.function.Function<Monitoring, keenward.core.plan.Fact<String>> part) {
    return plan.monitoring().find().map(part).map(Say::factOrBlank).orElse("");
  }

  private List<View> missing() {
    List<View> missing = new ArrayList<>();
    if (plan.zones().stream().noneMatch(zone -> zone.response() == ZoneResponse.ENTRY_EXIT)) {
      missing.add(
          Say.missing(
              "which door to come in by, since no zone has the response entry-exit",
              "zones: { 1: { name: Front door, response: entry-exit, device: contact } }",
              "zones"));
    }
    if (!plan.site().contact().isGiven()) {
      missing.add(Say.missing("whom to call", "contact: ...", "site"));
    }
    return missing;
  }
}
