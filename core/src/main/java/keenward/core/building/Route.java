package keenward.core.building;

import java.util.List;
import keenward.core.building.plane.Polygons;

/**
 * A way through rooms.
 *
 * @param rooms the rooms in order, first and last included; {@code outside} may be among them
 * @param passages the passages between them, one fewer
 */
public record Route(List<String> rooms, List<Passage> passages) {

  public Route {
    rooms = List.copyOf(rooms);
    passages = List.copyOf(passages);
    if (rooms.size() != passages.size() + 1) {
      throw new IllegalArgumentException("a route has a passage between any two of its rooms");
    }
  }

  /** Number of passages walked through. */
  public int hops() {
    return passages.size();
  }

  /**
   * A length in metres that no walk along this route can undercut: straight lines from each opening
   * to the next, each between their nearest points. A passage without a place in the drawing, or on
   * a stair, adds nothing, so the figure stays a lower bound.
   */
  public double leastLengthMetres() {
    double total = 0;
    for (int i = 1; i < passages.size(); i++) {
      Passage before = passages.get(i - 1);
      Passage after = passages.get(i);
      if (before.jambs().isPresent() && after.jambs().isPresent()) {
        Passage.Jambs one = before.jambs().get();
        Passage.Jambs other = after.jambs().get();
        total += Polygons.distance(one.left(), one.right(), other.left(), other.right());
      }
    }
    return total;
  }
}
