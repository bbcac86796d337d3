package keenward.core.plan;

import java.util.List;
import keenward.core.quantities.Length;

/**
 * Something that stands in the way of a walker or a detector.
 *
 * @param name name, unique in the plan
 * @param outline corners in order, not closed
 * @param height its height
 */
public record Furniture(String name, List<Point> outline, Fact<Length> height) {

  public Furniture {
    outline = List.copyOf(outline);
  }
}
