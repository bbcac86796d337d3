package keenward.core.building;

import keenward.core.building.plane.Polygons;
import keenward.core.plan.Opening;
import keenward.core.plan.Point;

/**
 * An opening on its wall.
 *
 * @param opening the opening as the plan states it
 * @param wall the wall it is in
 * @param leftJamb its left end, seen from the first room it names, facing the wall
 * @param rightJamb its right end
 */
public record OpeningPlace(Opening opening, WallSegment wall, Point leftJamb, Point rightJamb) {

  /** The middle of the opening. */
  public Point middle() {
    return Polygons.along(leftJamb, rightJamb, 0.5);
  }

  /** Width in metres. */
  public double widthMetres() {
    return leftJamb.distanceMetres(rightJamb);
  }

  /** A step of one metre, square to the wall, into the first room it names. */
  public Point inward() {
    double width = widthMetres();
    return new Point(
        (rightJamb.yMetres() - leftJamb.yMetres()) / width,
        -(rightJamb.xMetres() - leftJamb.xMetres()) / width);
  }
}
