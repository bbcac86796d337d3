package keenward.core.plan;

/**
 * A place on a floor, in metres; x to the right (east on an unturned plan), y up (north).
 *
 * @param xMetres distance to the right of the floor's origin
 * @param yMetres distance above the floor's origin
 */
public record Point(double xMetres, double yMetres) {

  /** Distance to another place. */
  public double distanceMetres(Point other) {
    return Math.hypot(xMetres - other.xMetres, yMetres - other.yMetres);
  }
}
