package keenward.core.building.coverage;

import java.util.Optional;
import keenward.core.building.RoomGeometry;
import keenward.core.building.plane.SeenArea;
import keenward.core.plan.Point;

/** Where a device on a wall looks or sounds from. */
public final class Eye {

  /** A detector on a wall looks from so far in front of it. */
  private static final double CLEAR_METRES = 0.02;

  /** How far a detector may be drawn outside its room, as for every device. */
  private static final double MOST_METRES = 0.6;

  private static final int DIRECTIONS = 32;

  private Eye() {}

  /**
   * The place itself where it stands clear of the walls of the room, else the nearest of the places
   * around it that does; empty when it lies too far outside.
   */
  public static Optional<Point> in(RoomGeometry room, Point place) {
    if (isClear(room, place)) {
      return Optional.of(place);
    }
    for (double away = CLEAR_METRES; away <= MOST_METRES; away += CLEAR_METRES) {
      for (int i = 0; i < DIRECTIONS; i++) {
        double direction = SeenArea.FULL_TURN * i / DIRECTIONS;
        Point near =
            new Point(
                place.xMetres() + away * Math.cos(direction),
                place.yMetres() + away * Math.sin(direction));
        if (isClear(room, near)) {
          return Optional.of(near);
        }
      }
    }
    return Optional.empty();
  }

  private static boolean isClear(RoomGeometry room, Point place) {
    return room.contains(place) && room.distanceToWallsMetres(place) >= CLEAR_METRES;
  }
}
