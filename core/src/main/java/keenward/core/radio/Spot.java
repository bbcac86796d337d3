package keenward.core.radio;

import keenward.core.plan.Point;

/**
 * A place in the building.
 *
 * @param storey number of its floor, the lowest 0
 * @param xMetres to the right
 * @param yMetres up the plan
 * @param zMetres above the lowest floor
 */
record Spot(int storey, double xMetres, double yMetres, double zMetres) {

  Point point() {
    return new Point(xMetres, yMetres);
  }

  double metresTo(Spot other) {
    return Math.hypot(
        Math.hypot(other.xMetres - xMetres, other.yMetres - yMetres), other.zMetres - zMetres);
  }
}
