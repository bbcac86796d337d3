package keenward.drawing.floor;

import java.util.List;
import keenward.core.plan.Point;

/**
 * Brings metres on the floor to pixels of the drawing: north up, or turned a quarter to the right,
 * so that north points to the right, which suits a long floor on a narrow page.
 *
 * @param left pixels at the left edge of the rooms
 * @param top pixels at their top edge
 * @param origin the corner of the rooms, in metres, that is drawn top left
 * @param scale pixels a metre
 * @param turned whether the floor is turned
 */
record Frame(double left, double top, Point origin, double scale, boolean turned) {

  Spot at(Point point) {
    Spot step =
        direction(
            new Point(point.xMetres() - origin.xMetres(), point.yMetres() - origin.yMetres()));
    return new Spot(left + step.x() * scale, top + step.y() * scale);
  }

  List<Spot> at(List<Point> points) {
    return points.stream().map(this::at).toList();
  }

  Point metres(Spot spot) {
    double across = (spot.x() - left) / scale;
    double down = (spot.y() - top) / scale;
    return turned
        ? new Point(origin.xMetres() + down, origin.yMetres() + across)
        : new Point(origin.xMetres() + across, origin.yMetres() - down);
  }

  /** A step on the floor, in metres, as a step in the drawing, in pixels at a scale of one. */
  Spot direction(Point step) {
    return turned
        ? new Spot(step.yMetres(), step.xMetres())
        : new Spot(step.xMetres(), -step.yMetres());
  }

  /** How far north is turned to the right. */
  double northDegrees() {
    return turned ? 90 : 0;
  }
}
