package keenward.core.rules.walk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.building.Building;
import keenward.core.building.DevicePlace;
import keenward.core.building.Passage;
import keenward.core.building.Route;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.EdgeSelector;
import keenward.core.plan.Habit;
import keenward.core.plan.HabitAction;
import keenward.core.plan.MissingFact;
import keenward.core.plan.Opening;
import keenward.core.plan.Partition;
import keenward.core.plan.Person;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.plan.ZoneResponse;

/**
 * Every way in of a plan. A walk goes through doors, stairs and the like by the fewest of them, and
 * never outside again.
 *
 * @param ways one for each entry-exit zone whose start and keypads have a place
 * @param notKnown what the others lack
 */
public record EntryWays(List<EntryWay> ways, List<MissingFact> notKnown) {

  public EntryWays {
    ways = List.copyOf(ways);
    notKnown = List.copyOf(notKnown);
  }

  /** The ways in of a plan. */
  public static EntryWays of(SitePlan plan, Building building) {
    return new Finder(plan, building).find();
  }

  private static final class Finder {
    private final SitePlan plan;
    private final Building building;
    private final Map<String, Opening> openings = new LinkedHashMap<>();
    private final Map<String, String> roomOf = new LinkedHashMap<>();
    private final List<EntryWay> ways = new ArrayList<>();
    private final List<MissingFact> notKnown = new ArrayList<>();

    Finder(SitePlan plan, Building building) {
      this.plan = plan;
      this.building = building;
      plan.openings().forEach(opening -> openings.put(opening.name(), opening));
      for (DevicePlace place : building.devices()) {
        place.room().ifPresent(room -> roomOf.put(place.device().name(), room));
      }
    }

    EntryWays find() {
      List<Zone> entries =
          plan.zones().stream().filter(zone -> zone.response() == ZoneResponse.ENTRY_EXIT).toList();
      if (entries.isEmpty()) {
        return new EntryWays(ways, notKnown);
      }
      if (plan.floors().isEmpty()) {
        miss(
            PlanPath.of("floors"),
            "the ways in, since the plan has no rooms",
            "floors: { Ground: { rooms: { Hall: { use: hall } } } }");
      } else if (plan.devicesOf(DeviceKind.KEYPAD).findAny().isEmpty()) {
        miss(
            PlanPath.of("devices"),
            "the ways in, since the plan has no keypad",
            "devices: { Hall keypad: { kind: keypad, room: Hall } }");
      } else {
        entries.forEach(this::find);
      }
      return new EntryWays(ways, notKnown);
    }

    private void find(Zone zone) {
      Optional<Opening> door = door(zone);
      List<String> starts = starts(zone, door);
      if (starts.isEmpty()) {
        miss(
            zone.path().then("device"),
            "the way in by zone "
                + zone.number()
                + " '"
                + zone.name()
                + "', since the plan does not say which opening it watches",
            "opening: Front door");
        return;
      }
      List<Device> keypads = keypads(zone);
      List<Device> placed =
          keypads.stream().filter(keypad -> roomOf.containsKey(keypad.name())).toList();
      List<Walk> walks = habitual(door, starts, placed);
      boolean byHabit = !walks.isEmpty();
      if (!byHabit) {
        walks = nearest(starts, placed);
      }
      if (walks.isEmpty() && placed.size() < keypads.size()) {
        keypads.removeAll(placed);
        miss(
            PlanPath.of("devices", keypads.getFirst().name()),
            "the way in by zone "
                + zone.number()
                + " '"
                + zone.name()
                + "', since the plan does not say in which room '"
                + keypads.getFirst().name()
                + "' is",
            "room: Hall");
        return;
      }
      String start = door.map(Opening::name).orElse(starts.getFirst());
      ways.add(new EntryWay(zone, door, start, walks, byHabit));
    }

    private Optional<Opening> door(Zone zone) {
      for (ZoneDevice each : zone.devices()) {
        if (each instanceof ZoneDevice.Fitted fitted) {
          Optional<Opening> opening = fitted.device().opening().find().map(openings::get);
          if (opening.isPresent()) {
            return opening;
          }
        }
      }
      return Optional.empty();
    }

    private List<String> starts(Zone zone, Optional<Opening> door) {
      if (door.isPresent()) {
        EdgeSelector place = door.get().place();
        return door.get().isOutside()
            ? List.of(place.room())
            : List.of(place.room(), place.beyond());
      }
      for (ZoneDevice each : zone.devices()) {
        if (each instanceof ZoneDevice.Fitted fitted) {
          String room = roomOf.get(fitted.device().name());
          if (room != null) {
            return List.of(room);
          }
        }
      }
      return List.of();
    }

    private List<Device> keypads(Zone zone) {
      List<Device> keypads = new ArrayList<>();
      for (Device device : plan.devices()) {
        if (device.kind() == DeviceKind.KEYPAD
            && plan.partitions().stream()
                .filter(partition -> zone.partitions().contains(partition.name()))
                .anyMatch(partition -> serves(device, partition))) {
          keypads.add(device);
        }
      }
      return keypads;
    }

    private static boolean serves(Device keypad, Partition partition) {
      return partition.keypads().isEmpty() || partition.keypads().contains(keypad.name());
    }

    private List<Walk> habitual(Optional<Opening> door, List<String> starts, List<Device> keypads) {
      List<Walk> walks = new ArrayList<>();
      if (door.isEmpty()) {
        return walks;
      }
      for (Person person : plan.people()) {
        for (Habit habit : person.habits()) {
          if (habit.action() == HabitAction.DISARM
              && habit.through().find().filter(door.get().name()::equals).isPresent()) {
            keypads.stream()
                .filter(keypad -> habit.keypad().find().filter(keypad.name()::equals).isPresent())
                .findFirst()
                .flatMap(keypad ->
                    route(starts, keypad)
                        .map(route ->
                            new Walk(keypad, route, Optional.of(new Walk.Habitual(person, habit)))))
                .ifPresent(walks::add);
          }
        }
      }
      return walks;
    }

    private List<Walk> nearest(List<String> starts, List<Device> keypads) {
      List<Walk> nearest = new ArrayList<>();
      for (Device keypad : keypads) {
        Optional<Route> route = route(starts, keypad);
        if (route.isEmpty()) {
          continue;
        }
        int best = nearest.isEmpty() ? Integer.MAX_VALUE : nearest.getFirst().route().hops();
        if (route.get().hops() < best) {
          nearest.clear();
        }
        if (route.get().hops() <= best) {
          nearest.add(new Walk(keypad, route.get(), Optional.empty()));
        }
      }
      return nearest;
    }

    private Optional<Route> route(List<String> starts, Device keypad) {
      String room = roomOf.get(keypad.name());
      Optional<Route> best = Optional.empty();
      if (room == null) {
        return best;
      }
      for (String start : starts) {
        Optional<Route> route = building.graph().findRoute(start, room, Finder::staysInside);
        if (route.isPresent() && (best.isEmpty() || route.get().hops() < best.get().hops())) {
          best = route;
        }
      }
      return best;
    }

    private static boolean staysInside(Passage passage) {
      return passage.isForWalking() && !passage.touches(EdgeSelector.OUTSIDE);
    }

    private void miss(PlanPath place, String why, String lineToAdd) {
      notKnown.add(new MissingFact(place, why, lineToAdd));
    }
  }
}
