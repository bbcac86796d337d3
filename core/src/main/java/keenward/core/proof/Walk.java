package keenward.core.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.plan.Floor;
import keenward.core.plan.Point;
import keenward.core.plan.Room;
import keenward.core.plan.SitePlan;

/**
 * The order in which rooms are walked: the panel's floor first, then the others as the plan lists
 * them; on each floor from room to the nearest room not yet seen, by the middle of their outlines.
 * Rooms without an outline follow in the order of the plan.
 */
final class Walk {
  private final Map<String, Integer> places = new HashMap<>();

  private Walk() {}

  static Walk of(SitePlan plan) {
    Walk walk = new Walk();
    Optional<String> panelRoom = plan.panel().room().find();
    List<Floor> floors = new ArrayList<>(plan.floors());
    panelRoom
        .flatMap(plan::findFloorOfRoom)
        .ifPresent(floor -> {
          floors.remove(floor);
          floors.addFirst(floor);
        });
    for (Floor floor : floors) {
      walk.add(floor, panelRoom);
    }
    return walk;
  }

  /** Rank of a place; places that are not known come last. */
  int rank(Optional<Place> place) {
    return place
        .map(each -> places.getOrDefault(each.room(), Integer.MAX_VALUE))
        .orElse(Integer.MAX_VALUE);
  }

  private void add(Floor floor, Optional<String> panelRoom) {
    List<Room> left = new ArrayList<>();
    List<Room> undrawn = new ArrayList<>();
    floor.rooms().forEach(room -> (room.outline().isEmpty() ? undrawn : left).add(room));
    Optional<Room> start =
        left.stream().filter(room -> room.name().equals(panelRoom.orElse(""))).findFirst();
    Room here = start.orElse(left.isEmpty() ? null : left.getFirst());
    while (here != null) {
      left.remove(here);
      places.put(here.name(), places.size());
      Point from = middle(here);
      here =
          left.stream()
              .min(Comparator.comparingDouble(room -> middle(room).distanceMetres(from)))
              .orElse(null);
    }
    undrawn.forEach(room -> places.put(room.name(), places.size()));
  }

  private static Point middle(Room room) {
    double x = room.outline().stream().mapToDouble(Point::xMetres).average().orElse(0);
    double y = room.outline().stream().mapToDouble(Point::yMetres).average().orElse(0);
    return new Point(x, y);
  }
}
