package keenward.drawing.floor;

import keenward.drawing.svg.Svg;

/**
 * A place in the drawing, in pixels from its top left corner.
 *
 * @param x to the right
 * @param y down
 */
record Spot(double x, double y) {

  Spot plus(double dx, double dy) {
    return new Spot(x + dx, y + dy);
  }

  /** The spot so many steps further along a direction. */
  Spot along(Spot direction, double steps) {
    return new Spot(x + direction.x * steps, y + direction.y * steps);
  }

  double distance(Spot other) {
    return Math.hypot(x - other.x, y - other.y);
  }

  /** As in path data. */
  @Override
  public String toString() {
    return Svg.number(x) + "," + Svg.number(y);
  }
}
