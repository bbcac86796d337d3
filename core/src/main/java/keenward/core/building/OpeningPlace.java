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

  private static final double STEP_METRES = 0.3;

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

  /** Where somebody stands who has just come in by it: 0.3 m inside its middle. */
  public Point justInside() {
    Point inward = inward();
    return new Point(
        middle().xMetres() + STEP_METRES * inward.xMetres(),
        middle().yMetres() + STEP_METRES * inward.yMetres());
  }
}
