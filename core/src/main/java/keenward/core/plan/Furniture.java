package keenward.core.plan;

import java.util.List;
import keenward.core.quantities.Length;

/**
 * Something that stands in the way of a walker or a detector.
 *
 * @param name name, unique in the plan
 * @param outline corners in order, not closed
 * @param height its height
 * @param warms whether it grows warm or moves air by itself: a heater, an oven, a boiler, a fan
 */
public record Furniture(
    String name, List<Point> outline, Fact<Length> height, Fact<Boolean> warms) {

  public Furniture {
    outline = List.copyOf(outline);
  }
}
