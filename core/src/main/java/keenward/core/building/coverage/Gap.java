package keenward.core.building.coverage;

import java.util.List;
import keenward.core.plan.Point;

/**
 * A part of a room in which a person can stand and no detector looks.
 *
 * @param squareMetres its area
 * @param rings its outline, then the outlines of holes in it; none of them closed
 * @param reaches openings and stairs of the room that can be reached within it, in the order of the
 *     plan
 */
public record Gap(double squareMetres, List<List<Point>> rings, List<String> reaches) {

  public Gap {
    rings = rings.stream().map(List::copyOf).toList();
    reaches = List.copyOf(reaches);
  }

  /** Whether a person can come in by one way and leave by another without being seen. */
  public boolean canBeCrossed() {
    return reaches.size() > 1;
  }
}
