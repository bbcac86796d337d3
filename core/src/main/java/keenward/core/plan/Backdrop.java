package keenward.core.plan;

import java.util.List;
import keenward.core.quantities.Angle;
import keenward.core.quantities.Length;

/**
 * A picture of a floor under its drawing, to trace rooms over: a scan, a photo or a page of a PDF.
 *
 * @param picture file of the picture, by its path from the folder of the plan
 * @param page page of a PDF, from 1
 * @param points two places of the picture whose distance was measured; none when not stated
 * @param distance how far apart they are in the building
 * @param at where the first of them lies on the floor
 * @param bearing direction from the first to the second on the floor; when missing, as in the
 *     picture
 */
public record Backdrop(
    String picture,
    int page,
    List<PicturePoint> points,
    Fact<Length> distance,
    Fact<Point> at,
    Fact<Angle> bearing) {

  public Backdrop {
    points = List.copyOf(points);
  }
}
