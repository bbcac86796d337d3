package keenward.core.building;

import keenward.core.plan.EdgeSelector;
import keenward.core.plan.Fact;
import keenward.core.plan.Material;
import keenward.core.plan.Point;
import keenward.core.quantities.Length;

/**
 * A straight piece of wall with the same room, or outside, all along each side.
 *
 * @param floor name of its floor
 * @param room the room on one side; of two rooms the one that comes first in the plan
 * @param beyond the room on the other side, or {@link EdgeSelector#OUTSIDE}
 * @param start its first end, in the order of the room's outline
 * @param end its other end
 * @param edge its number among the walls between the two, counted from 1 along the room's outline
 * @param beyondEdge its number counted along the outline of the room beyond; 0 when that is outside
 * @param beyondRunsBack whether the outline of the room beyond passes it from end to start
 * @param roomOnLeft whether the room lies to the left of the way from start to end
 * @param material what it is made of
 * @param height its height when the plan states one for this wall
 */
public record WallSegment(
    String floor,
    String room,
    String beyond,
    Point start,
    Point end,
    int edge,
    int beyondEdge,
    boolean beyondRunsBack,
    boolean roomOnLeft,
    Fact<Material> material,
    Fact<Length> height) {

  /** Whether the other side is outside. */
  public boolean isOuter() {
    return beyond.equals(EdgeSelector.OUTSIDE);
  }

  /** Whether it stands between these two, in either order. */
  public boolean isBetween(String one, String other) {
    return (room.equals(one) && beyond.equals(other)) || (room.equals(other) && beyond.equals(one));
  }

  /** Length in metres. */
  public double lengthMetres() {
    return start.distanceMetres(end);
  }

  /** Its number seen from one of its rooms. */
  public int edgeFrom(String name) {
    return name.equals(room) ? edge : beyondEdge;
  }

  /** Its first end in the order of the outline of one of its rooms. */
  public Point startFrom(String name) {
    return runsBackFrom(name) ? end : start;
  }

  /** Its other end in the order of the outline of one of its rooms. */
  public Point endFrom(String name) {
    return runsBackFrom(name) ? start : end;
  }

  /** Whether one of its rooms lies to the left of the way from start to end. */
  boolean isOnLeft(String name) {
    return name.equals(room) == roomOnLeft;
  }

  private boolean runsBackFrom(String name) {
    return !name.equals(room) && beyondRunsBack;
  }
}
