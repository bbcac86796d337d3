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

  /** Whether people walk through it as a rule: stairs, and openings made for that. */
  public boolean isForWalking() {
    return opening.map(each -> each.kind().isForWalking()).orElse(true);
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
