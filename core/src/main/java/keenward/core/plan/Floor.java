package keenward.core.plan;

import java.util.List;
import keenward.core.quantities.Length;

/**
 * One floor of the building.
 *
 * @param name name, unique in the plan
 * @param unit unit of its plain coordinates; the points of this model are metres already
 * @param height floor to ceiling
 * @param snap rooms whose edges lie closer than this share a wall
 * @param wallMaterial what a wall is made of where nothing else is said
 * @param rooms rooms in the order written
 * @param walls walls that differ
 * @param openings doors, windows and the like
 * @param furniture things in the way
 * @param stairs stairs that start here
 * @param backdrop a picture to trace its rooms over; missing for most
 */
public record Floor(
    String name,
    DrawingUnit unit,
    Fact<Length> height,
    Fact<Length> snap,
    Fact<Material> wallMaterial,
    List<Room> rooms,
    List<Wall> walls,
    List<Opening> openings,
    List<Furniture> furniture,
    List<Stair> stairs,
    Fact<Backdrop> backdrop) {

  /** Rooms whose edges lie closer than this share a wall, where the floor says nothing. */
  public static final double USUAL_SNAP_METRES = 0.05;

  public Floor {
    rooms = List.copyOf(rooms);
    walls = List.copyOf(walls);
    openings = List.copyOf(openings);
    furniture = List.copyOf(furniture);
    stairs = List.copyOf(stairs);
  }

  /** The snap distance in force. */
  public double snapMetres() {
    return snap.map(Length::metres).orElse(USUAL_SNAP_METRES);
  }
}
