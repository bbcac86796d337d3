package keenward.core.building.coverage;

import java.util.List;

/**
 * How much of a floor is watched.
 *
 * @param floor name of the floor
 * @param rooms its drawn rooms, in the order of the plan
 */
public record FloorCoverage(String floor, List<RoomCoverage> rooms) {

  public FloorCoverage {
    rooms = List.copyOf(rooms);
  }

  /** Floor to stand on. */
  public double floorSquareMetres() {
    return rooms.stream().mapToDouble(RoomCoverage::floorSquareMetres).sum();
  }

  /** How much of it is seen. */
  public double seenSquareMetres() {
    return rooms.stream().mapToDouble(RoomCoverage::seenSquareMetres).sum();
  }
}
