package keenward.core.building.walking;

import java.util.ArrayList;
import java.util.Comparator;
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
 * Every way in of a plan. A walk is the shortest one as drawn; where the drawing does not say, it
 * goes through doors and stairs by the fewest of them. It never goes outside again.
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
  public static EntryWays of(SitePlan plan, WalkingMap map) {
    return new Finder(plan, map).find();
  }

  private static final class Finder {
    private final SitePlan plan;
    private final WalkingMap map;
    private final Building building;
    private final Map<String, Opening> openings = new LinkedHashMap<>();
    private final Map<String, String> roomOf = new LinkedHashMap<>();
    private final List<EntryWay> ways = new ArrayList<>();
    private final List<MissingFact> notKnown = new ArrayList<>();

    Finder(SitePlan plan, WalkingMap map) {
      this.plan = plan;
      this.map = map;
      building = map.building();
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
        walks = nearest(door, starts, placed);
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
                    walk(door, starts, keypad, Optional.of(new Walk.Habitual(person, habit))))
                .ifPresent(walks::add);
          }
        }
      }
      return walks;
    }

    /** The nearest keypad as drawn; where the drawing does not say, those through fewest doors. */
    private List<Walk> nearest(Optional<Opening> door, List<String> starts, List<Device> keypads) {
      List<Walk> walks =
          keypads.stream()
              .flatMap(keypad -> walk(door, starts, keypad, Optional.empty()).stream())
              .toList();
      Optional<Walk> shortest =
          walks.stream()
              .filter(walk -> walk.drawn().find().isPresent())
              .min(Comparator.comparingDouble(walk -> walk.drawn().find().orElseThrow().metres()));
      boolean allTold =
          walks.stream().noneMatch(walk -> walk.drawn() instanceof WalkingMap.Search.Unknown);
      if (shortest.isPresent() && allTold) {
        return List.of(shortest.get());
      }
      int fewest = walks.stream().mapToInt(walk -> walk.route().hops()).min().orElse(0);
      return walks.stream().filter(walk -> walk.route().hops() == fewest).toList();
    }

    private Optional<Walk> walk(
        Optional<Opening> door,
        List<String> starts,
        Device keypad,
        Optional<Walk.Habitual> habitual) {
      WalkingMap.Search drawn = map.search(door, keypad);
      return drawn
          .find()
          .map(WalkingRoute::byRooms)
          .or(() -> byRooms(starts, keypad))
          .map(route -> new Walk(keypad, route, drawn, habitual));
    }

    private Optional<Route> byRooms(List<String> starts, Device keypad) {
      String room = roomOf.get(keypad.name());
      return room == null
          ? Optional.empty()
          : starts.stream()
              .flatMap(
                  start -> building.graph().findRoute(start, room, Finder::staysInside).stream())
              .min(Comparator.comparingInt(Route::hops));
    }

    private static boolean staysInside(Passage passage) {
      return passage.isForWalking() && !passage.touches(EdgeSelector.OUTSIDE);
    }

    private void miss(PlanPath place, String why, String lineToAdd) {
      notKnown.add(new MissingFact(place, why, lineToAdd));
    }
  }
}
