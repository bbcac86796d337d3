package keenward.core.rehearsal.planned;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.building.Building;
import keenward.core.building.Passage;
import keenward.core.building.Route;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.EdgeSelector;
import keenward.core.plan.Opening;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;

/**
 * What the detectors see of somebody who walks between a door and a keypad, by the rooms on the
 * way.
 */
final class Walk {

  /** A slow room a hop, until the drawing's own walking times are used. */
  private static final int SECONDS_A_ROOM = 4;

  private static final int DOOR_OPEN_SECONDS = 3;

  private final SitePlan plan;
  private final Building building;
  private final Map<String, List<Integer>> zonesOfOpening = new HashMap<>();
  private final Map<String, List<Integer>> watchersOfRoom = new HashMap<>();

  Walk(SitePlan plan, Building building) {
    this.plan = plan;
    this.building = building;
    for (int index = 0; index < plan.zones().size(); index++) {
      addZone(index, plan.zones().get(index));
    }
  }

  private void addZone(int index, Zone zone) {
    for (ZoneDevice device : zone.devices()) {
      if (device instanceof ZoneDevice.Fitted(Device fitted, var ignored)) {
        if (fitted.kind() == DeviceKind.CONTACT) {
          fitted.opening().find().ifPresent(opening -> add(zonesOfOpening, opening, index));
        } else if (watchesRoom(fitted.kind())) {
          fitted.room().find().ifPresent(room -> add(watchersOfRoom, room, index));
        }
      }
    }
  }

  private static boolean watchesRoom(DeviceKind kind) {
    return switch (kind) {
      case MOTION, DUAL_MOTION, CURTAIN, BEAM -> true;
      default -> false;
    };
  }

  private static void add(Map<String, List<Integer>> zones, String where, int index) {
    List<Integer> known = zones.computeIfAbsent(where, ignored -> new ArrayList<>());
    if (!known.contains(index)) {
      known.add(index);
    }
  }

  /** The zones that watch an opening by a contact. */
  List<Integer> zonesOf(String opening) {
    return zonesOfOpening.getOrDefault(opening, List.of());
  }

  /** The way from a door to a keypad; nothing when the plan does not say where they are. */
  Optional<Route> inwards(String door, String keypad) {
    Optional<String> entrance =
        plan.openings()
            .filter(each -> each.name().equals(door) && each.isOutside())
            .map(Walk::innerRoom)
            .findFirst();
    Optional<String> goal = plan.findDevice(keypad).flatMap(device -> device.room().find());
    if (entrance.isEmpty() || goal.isEmpty()) {
      return Optional.empty();
    }
    return building.graph().findRoute(entrance.get(), goal.get(), Walk::isInside);
  }

  private static boolean isInside(Passage passage) {
    return passage.isForWalking() && !passage.touches(EdgeSelector.OUTSIDE);
  }

  private static String innerRoom(Opening opening) {
    return opening.place().room().equals(EdgeSelector.OUTSIDE)
        ? opening.place().beyond()
        : opening.place().room();
  }

  /** Somebody comes in by a door and goes to a keypad; time goes on by as long as that takes. */
  void comeIn(ScriptText script, String door, Optional<Route> route) {
    openDoor(script, zonesOf(door));
    route.ifPresent(way -> follow(script, way.rooms(), way.passages()));
  }

  /** Somebody goes from a keypad to a door and out; time goes on by as long as that takes. */
  void goOut(ScriptText script, String door, Optional<Route> route) {
    route.ifPresent(way -> follow(script, way.rooms().reversed(), way.passages().reversed()));
    openDoor(script, zonesOf(door));
  }

  private static void openDoor(ScriptText script, List<Integer> zones) {
    for (int zone : zones) {
      script.line("open " + script.zone(zone) + " for " + DOOR_OPEN_SECONDS + " s");
    }
  }

  private void follow(ScriptText script, List<String> rooms, List<Passage> passages) {
    for (int room = 0; room < rooms.size(); room++) {
      if (room > 0) {
        openDoor(script, zonesOf(passages.get(room - 1).name()));
      }
      script.later(SECONDS_A_ROOM / 2);
      for (int zone : watchersOfRoom.getOrDefault(rooms.get(room), List.of())) {
        script.line("violate " + script.zone(zone) + " for 2 s");
      }
      script.later(SECONDS_A_ROOM / 2);
    }
  }
}
