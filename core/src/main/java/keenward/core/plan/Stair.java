package keenward.core.plan;

import keenward.core.quantities.Length;

/**
 * A stair between two floors.
 *
 * @param name name, unique in the plan
 * @param room where it starts, on the floor that states it
 * @param to room of another floor where it ends
 * @param at where in the first room its first step is
 * @param endsAt where in the other room its last step is
 * @param run how far one walks on it, measured level
 */
public record Stair(
    String name, String room, String to, Fact<Point> at, Fact<Point> endsAt, Fact<Length> run) {

  /** A stair of which only the rooms are known. */
  public static Stair between(String name, String room, String to) {
    return new Stair(name, room, to, Fact.missing(), Fact.missing(), Fact.missing());
  }
}
