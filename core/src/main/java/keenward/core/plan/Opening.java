package keenward.core.plan;

import keenward.core.quantities.Length;

/**
 * A door, window or other opening. It sits on a wall, so it can't float.
 *
 * @param name name, unique in the plan
 * @param kind what it is
 * @param place which wall
 * @param at distance along that wall from its first corner (in the order of the named room's
 *     outline) to the nearer jamb
 * @param width clear width
 * @param height clear height
 * @param hinge side of the hinge, seen from the first named room
 * @param opens to which side of the wall it opens, seen from the first named room
 * @param material what leaf or pane is made of
 * @param reachable whether it can be reached from outside without a ladder; missing means yes on
 *     the lowest floor
 * @param excluded reason signed off for leaving it unprotected
 * @param note anything else
 */
public record Opening(
    String name,
    OpeningKind kind,
    EdgeSelector place,
    Fact<Length> at,
    Fact<Length> width,
    Fact<Length> height,
    Fact<Hinge> hinge,
    Fact<Swing> opens,
    Fact<Material> material,
    Fact<Boolean> reachable,
    Fact<String> excluded,
    Fact<String> note) {

  /** Whether it leads outside. */
  public boolean isOutside() {
    return place.beyond().equals(EdgeSelector.OUTSIDE);
  }

  /** Whether people walk through it from one room to another. */
  public boolean isInnerWay() {
    return kind.isForWalking() && !isOutside() && !place.room().equals(EdgeSelector.OUTSIDE);
  }

  /** Whether the room with this name is on one of its sides. */
  public boolean touches(String room) {
    return place.room().equals(room) || place.beyond().equals(room);
  }

  /** Whether somebody can come in by it from outside without a ladder. */
  public boolean isReachable(boolean isOnLowestFloor) {
    return isOutside() && reachable.orElse(isOnLowestFloor);
  }
}
