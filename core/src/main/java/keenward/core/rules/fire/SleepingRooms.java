package keenward.core.rules.fire;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.EdgeSelector;
import keenward.core.plan.Floor;
import keenward.core.plan.Opening;
import keenward.core.plan.Room;
import keenward.core.plan.RoomUse;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Standard;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.plan.ZoneResponse;

/** Where people sleep, and which rooms a zone of a life-safety response watches. */
final class SleepingRooms {

  private SleepingRooms() {}

  /** Whether the plan names a regime that says what sleepers need. */
  static boolean isJudged(SitePlan plan) {
    return plan.regimes().stream()
        .anyMatch(regime -> regime.standard() == Standard.NFPA72_HOUSEHOLD);
  }

  static List<Room> bedrooms(Floor floor) {
    return floor.rooms().stream().filter(room -> room.use().orNull() == RoomUse.BEDROOM).toList();
  }

  static boolean hasAny(SitePlan plan) {
    return plan.floors().stream().anyMatch(floor -> !bedrooms(floor).isEmpty());
  }

  /** Rooms from which a room is entered: those beyond its doors and doorways. */
  static List<String> roomsOutside(Floor floor, Room room) {
    Set<String> outside = new LinkedHashSet<>();
    for (Opening opening : floor.openings()) {
      EdgeSelector place = opening.place();
      if (place.room().equals(room.name()) && !opening.isOutside()) {
        outside.add(place.beyond());
      } else if (place.beyond().equals(room.name())) {
        outside.add(place.room());
      }
    }
    return List.copyOf(outside);
  }

  /** Rooms with a detector of one of these kinds behind a zone of this response. */
  static Set<String> watched(SitePlan plan, ZoneResponse response, Set<DeviceKind> kinds) {
    Set<String> rooms = new LinkedHashSet<>();
    for (Device device : detectors(plan, response, kinds)) {
      device.room().find().ifPresent(rooms::add);
    }
    return rooms;
  }

  /**
   * Whether some detector of these kinds has no room in the plan, so that any room may be watched.
   */
  static boolean isPlaceOpen(SitePlan plan, ZoneResponse response, Set<DeviceKind> kinds) {
    return detectors(plan, response, kinds).stream().anyMatch(each -> !each.room().isGiven())
        || plan.zones().stream()
            .filter(zone -> zone.response() == response)
            .anyMatch(zone ->
                zone.devices().isEmpty()
                    || zone.devices().stream()
                        .anyMatch(each ->
                            each instanceof ZoneDevice.Unplaced && kinds.contains(each.kind())));
  }

  /** Detectors of these kinds behind a zone of this response. */
  static List<Device> detectors(SitePlan plan, ZoneResponse response, Set<DeviceKind> kinds) {
    List<Device> devices = new ArrayList<>();
    for (Zone zone : plan.zones()) {
      if (zone.response() == response) {
        for (ZoneDevice each : zone.devices()) {
          if (each instanceof ZoneDevice.Fitted fitted && kinds.contains(each.kind())) {
            devices.add(fitted.device());
          }
        }
      }
    }
    return devices;
  }
}
