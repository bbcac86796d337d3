package keenward.core.building;

import java.util.List;
import keenward.core.building.plane.Polygons;
import keenward.core.plan.Point;
import keenward.core.plan.Room;

/**
 * A drawn room.
 *
 * @param room the room as the plan states it
 * @param outline its outline in the order written, after snapping, with the corners of its
 *     neighbours that lie on it
 * @param areaSquareMetres its area
 * @param centre the place inside it that is farthest from its walls, or as good as; where a label
 *     goes
 */
public record RoomGeometry(Room room, List<Point> outline, double areaSquareMetres, Point centre) {

  public RoomGeometry {
    outline = List.copyOf(outline);
  }

  /** Its name. */
  public String name() {
    return room.name();
  }

  /** Whether a place lies in it, its walls excluded up to rounding. */
  public boolean contains(Point place) {
    return Polygons.contains(outline, place);
  }

  /** Distance from a place to the nearest of its walls, in metres. */
  public double distanceToWallsMetres(Point place) {
    return Polygons.distanceToOutline(outline, place);
  }
}
