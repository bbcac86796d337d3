package keenward.core.building;

import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import keenward.core.building.plane.Polygons;
import keenward.core.plan.Point;

/**
 * The place inside an outline that is farthest from it (pole of inaccessibility), found by halving
 * squares and keeping those that could still hold a better place, as in Agafonkin, "A new algorithm
 * for finding a visual center of a polygon" (2016). The centre of area is taken when it is as good
 * within a hundredth of the outline's width.
 */
final class LabelPoint {

  private static final int MOST_SQUARES = 4000;

  private final List<Point> outline;

  private record Square(Point centre, double half, double clearance) {

    double bestPossible() {
      return clearance + half * Math.sqrt(2);
    }
  }

  private LabelPoint(List<Point> outline) {
    this.outline = outline;
  }

  static Point of(List<Point> outline) {
    return new LabelPoint(outline).find();
  }

  private Point find() {
    double left = outline.stream().mapToDouble(Point::xMetres).min().orElseThrow();
    double right = outline.stream().mapToDouble(Point::xMetres).max().orElseThrow();
    double bottom = outline.stream().mapToDouble(Point::yMetres).min().orElseThrow();
    double top = outline.stream().mapToDouble(Point::yMetres).max().orElseThrow();
    double side = Math.min(right - left, top - bottom);
    double precision = Math.max(right - left, top - bottom) / 100;
    Square centroid = square(Polygons.centroid(outline), 0);
    if (side <= 0) {
      return centroid.centre();
    }
    PriorityQueue<Square> open =
        new PriorityQueue<>(Comparator.comparingDouble(Square::bestPossible).reversed());
    double half = Math.max(side, precision) / 2;
    for (double x = left + half; x - half < right; x += 2 * half) {
      for (double y = bottom + half; y - half < top; y += 2 * half) {
        open.add(square(new Point(x, y), half));
      }
    }
    Square best = centroid;
    for (int looked = 0; looked < MOST_SQUARES; looked++) {
      Square square = open.poll();
      if (square == null || square.bestPossible() - best.clearance() <= precision) {
        break;
      }
      if (square.clearance() > best.clearance() + precision / 2) {
        best = square;
      }
      double quarter = square.half() / 2;
      for (int i = 0; i < 4; i++) {
        open.add(
            square(
                new Point(
                    square.centre().xMetres() + ((i & 1) == 0 ? -quarter : quarter),
                    square.centre().yMetres() + ((i & 2) == 0 ? -quarter : quarter)),
                quarter));
      }
    }
    return best.centre();
  }

  private Square square(Point centre, double half) {
    double distance = Polygons.distanceToOutline(outline, centre);
    return new Square(centre, half, Polygons.contains(outline, centre) ? distance : -distance);
  }
}
