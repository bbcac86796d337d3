package keenward.core.plan;

import java.util.List;

/**
 * A room. Its outline makes the walls: an edge shared with another room is an inner wall, an
 * unshared one an outer wall.
 *
 * @param name name, unique in the plan
 * @param use what it is used for
 * @param target whether what a burglar wants is there; missing means no
 * @param animals whether an animal moves about in it while the system is armed; missing means no
 * @param outline corners in order, not closed, at least three; empty when the plan has no drawing
 *     of it
 */
public record Room(
    String name,
    Fact<RoomUse> use,
    Fact<Boolean> target,
    Fact<Boolean> animals,
    List<Point> outline) {

  public Room {
    outline = List.copyOf(outline);
  }
}
