package keenward.core.building;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import keenward.core.plan.Floor;
import keenward.core.plan.Point;

/**
 * A floor as built: only rooms with a sound outline are in it.
 *
 * @param floor the floor as the plan states it
 * @param rooms drawn rooms in the order of the plan
 * @param walls walls, outer and inner, each once
 * @param openings openings that have a place on a wall
 */
public record FloorGeometry(
    Floor floor, List<RoomGeometry> rooms, List<WallSegment> walls, List<OpeningPlace> openings) {

  public FloorGeometry {
    rooms = List.copyOf(rooms);
    walls = List.copyOf(walls);
    openings = List.copyOf(openings);
  }

  /** Its name. */
  public String name() {
    return floor.name();
  }

  /** The drawn room with this name. */
  public Optional<RoomGeometry> findRoom(String name) {
    return rooms.stream().filter(room -> room.name().equals(name)).findFirst();
  }

  /** The room that contains a place; the first in the plan's order when rooms overlap. */
  public Optional<RoomGeometry> findRoomAt(Point place) {
    return rooms.stream().filter(room -> room.contains(place)).findFirst();
  }

  /** The opening with this name, when it has a place. */
  public Optional<OpeningPlace> findOpening(String name) {
    return openings.stream().filter(place -> place.opening().name().equals(name)).findFirst();
  }

  /** The walls between a room and another (or outside), in the order of the first one's outline. */
  public List<WallSegment> wallsBetween(String room, String beyond) {
    return walls.stream()
        .filter(wall -> wall.isBetween(room, beyond))
        .sorted(Comparator.comparingInt(wall -> wall.edgeFrom(room)))
        .toList();
  }
}
