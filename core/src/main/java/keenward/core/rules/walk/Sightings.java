package keenward.core.rules.walk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import keenward.core.building.Building;
import keenward.core.building.DevicePlace;
import keenward.core.building.Passage;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.plan.ZoneResponse;

/**
 * Which burglary zones see somebody who walks: motion detectors by room, contacts by the doors
 * passed. Curtains, beams and glass-break detectors guard openings, and are taken not to see the
 * middle of a room.
 */
public final class Sightings {
  private final Map<String, List<Zone>> byRoom = new LinkedHashMap<>();
  private final Map<String, List<Zone>> byOpening = new LinkedHashMap<>();
  private final List<Zone> placeless = new ArrayList<>();

  private Sightings() {}

  /**
   * One zone that sees a walker.
   *
   * @param zone the zone
   * @param where in words: its room or door, in quotation marks
   */
  public record Sighting(Zone zone, String where) {}

  /** What the burglary zones of a plan see. */
  public static Sightings of(SitePlan plan, Building building) {
    Map<String, String> roomOf = new LinkedHashMap<>();
    for (DevicePlace place : building.devices()) {
      place.room().ifPresent(room -> roomOf.put(place.device().name(), room));
    }
    Sightings sightings = new Sightings();
    for (Zone zone : plan.zones()) {
      if (isArmed(zone.response())) {
        sightings.add(zone, roomOf);
      }
    }
    return sightings;
  }

  /** The zones that see somebody in a room. */
  public List<Zone> inRoom(String room) {
    return List.copyOf(byRoom.getOrDefault(room, List.of()));
  }

  /** The zones whose contact is on an opening. */
  public List<Zone> atOpening(String opening) {
    return List.copyOf(byOpening.getOrDefault(opening, List.of()));
  }

  /**
   * The zones that see somebody on a walk, in the order met, each once; the door walked in by is
   * not among them.
   */
  public List<Sighting> onWalk(Walk walk) {
    List<Sighting> met = new ArrayList<>();
    Set<Integer> seen = new LinkedHashSet<>();
    List<String> rooms = walk.route().rooms();
    List<Passage> passages = walk.route().passages();
    for (int index = 0; index < rooms.size(); index++) {
      String room = rooms.get(index);
      for (Zone zone : inRoom(room)) {
        if (seen.add(zone.number())) {
          met.add(new Sighting(zone, "its room '" + room + "'"));
        }
      }
      if (index < passages.size()) {
        String door = passages.get(index).name();
        for (Zone zone : atOpening(door)) {
          if (seen.add(zone.number())) {
            met.add(new Sighting(zone, "its door '" + door + "'"));
          }
        }
      }
    }
    return met;
  }

  /**
   * Zones with a motion detector or contact that might be on a walk, since the plan gives it no
   * place.
   */
  public List<Zone> placeless() {
    return List.copyOf(placeless);
  }

  private void add(Zone zone, Map<String, String> roomOf) {
    boolean open = zone.devices().isEmpty();
    for (ZoneDevice each : zone.devices()) {
      switch (each) {
        case ZoneDevice.Unplaced(DeviceKind kind) -> open |= isMotion(kind);
        case ZoneDevice.Fitted fitted -> {
          Device device = fitted.device();
          if (isMotion(device.kind())) {
            String room = roomOf.get(device.name());
            open |= room == null;
            if (room != null) {
              put(byRoom, room, zone);
            }
          }
          device.opening().find().ifPresent(opening -> put(byOpening, opening, zone));
        }
      }
    }
    if (open) {
      placeless.add(zone);
    }
  }

  private static void put(Map<String, List<Zone>> map, String key, Zone zone) {
    List<Zone> zones = map.computeIfAbsent(key, ignored -> new ArrayList<>());
    if (!zones.contains(zone)) {
      zones.add(zone);
    }
  }

  private static boolean isMotion(DeviceKind kind) {
    return kind == DeviceKind.MOTION || kind == DeviceKind.DUAL_MOTION;
  }

  private static boolean isArmed(ZoneResponse response) {
    return switch (response) {
      case ENTRY_EXIT, FOLLOWER, PERIMETER, INSTANT -> true;
      default -> false;
    };
  }
}
