package keenward.drawing.floor;

import java.util.List;
import keenward.core.plan.Point;

/**
 * Brings metres on the floor, north up, to pixels of the drawing.
 *
 * @param left pixels at the western edge
 * @param top pixels at the northern edge
 * @param west the western edge in metres
 * @param north the northern edge in metres
 * @param scale pixels a metre
 */
record Frame(double left, double top, double west, double north, double scale) {

  Spot at(Point point) {
    return new Spot(
        left + (point.xMetres() - west) * scale, top + (north - point.yMetres()) * scale);
  }

  List<Spot> at(List<Point> points) {
    return points.stream().map(this::at).toList();
  }

  Point metres(Spot spot) {
    return new Point(west + (spot.x() - left) / scale, north - (spot.y() - top) / scale);
  }

  /** A step of one metre in plan directions as a step of one pixel in the drawing. */
  static Spot direction(Point step) {
    return new Spot(step.xMetres(), -step.yMetres());
  }
}
