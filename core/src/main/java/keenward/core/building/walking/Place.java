package keenward.core.building.walking;

import java.util.Optional;
import keenward.core.plan.Point;

/**
 * Where a walk begins or ends.
 *
 * @param name what it is called
 * @param floor name of its floor
 * @param room the room from which it is reached; empty for an opening inside, which is reached from
 *     both its sides
 * @param at where it is
 * @param kind how near one has to come
 */
public record Place(String name, String floor, Optional<String> room, Point at, Kind kind) {

  /** An arm's length and the depth of a shelf. Common practice, no source. */
  static final double REACH_METRES = 1;

  /** How near one has to come. */
  public enum Kind {
    /** A door or window: the walk leads through its middle. */
    OPENING,
    /** A device: one stands within reach of it. */
    DEVICE,
    /** A room: its middle, or the nearest place to it where one can stand. */
    ROOM,
    /** An end of a stair. */
    STAIR
  }

  /** How far from it one may stand at most. */
  double reachMetres() {
    return switch (kind) {
      case OPENING, DEVICE, STAIR -> REACH_METRES;
      case ROOM -> Double.POSITIVE_INFINITY;
    };
  }
}
