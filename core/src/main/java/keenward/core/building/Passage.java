package keenward.core.building;

import java.util.Optional;
import keenward.core.plan.EdgeSelector;
import keenward.core.plan.Opening;
import keenward.core.plan.Point;

/**
 * A way from one room to another, or to outside: an opening or a stair.
 *
 * @param name name of the opening or stair
 * @param room the room that the plan names first
 * @param beyond the room at the other end, or {@link EdgeSelector#OUTSIDE}
 * @param opening the opening; empty for a stair
 * @param jambs its two ends on the floor, left one first; empty when it has no place in the drawing
 */
public record Passage(
    String name, String room, String beyond, Optional<Opening> opening, Optional<Jambs> jambs) {

  /**
   * The two ends of an opening.
   *
   * @param left one end
   * @param right the other
   */
  public record Jambs(Point left, Point right) {}

  /** Whether it is a stair. */
  public boolean isStair() {
    return opening.isEmpty();
  }

  /**
   * Whether people use it to walk through: stairs, doors, gates, shutters and hatches, but no
   * windows.
   */
  public boolean isForWalking() {
    return opening
        .map(each ->
            switch (each.kind()) {
              case DOOR, DOUBLE_DOOR, SLIDING_DOOR, DOORWAY, ROLLER_SHUTTER, HATCH, GATE -> true;
              case WINDOW, FIXED_WINDOW, ROOF_WINDOW -> false;
            })
        .orElse(true);
  }

  /** Whether it touches this room (or outside). */
  public boolean touches(String name) {
    return room.equals(name) || beyond.equals(name);
  }

  /** The other end. */
  public String otherEnd(String name) {
    return room.equals(name) ? beyond : room;
  }
}
