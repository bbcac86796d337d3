package keenward.core.building.plane;

import java.util.List;
import keenward.core.plan.Point;

/** Plane geometry of closed outlines. */
public final class Polygons {

  private Polygons() {}

  /** Twice the signed area of the triangle a, b, c; positive when they turn to the left. */
  public static double turn(Point a, Point b, Point c) {
    return (b.xMetres() - a.xMetres()) * (c.yMetres() - a.yMetres())
        - (b.yMetres() - a.yMetres()) * (c.xMetres() - a.xMetres());
  }

  /** The length of an outline. */
  public static double perimeter(List<Point> outline) {
    double length = 0;
    for (int i = 0; i < outline.size(); i++) {
      length += outline.get(i).distanceMetres(outline.get((i + 1) % outline.size()));
    }
    return length;
  }

  /**
   * Signed area in square metres (shoelace formula); positive for an outline that runs to the left.
   */
  public static double signedArea(List<Point> outline) {
    Point origin = outline.getFirst();
    double doubled = 0;
    for (int i = 1; i + 1 < outline.size(); i++) {
      doubled += turn(origin, outline.get(i), outline.get(i + 1));
    }
    return doubled / 2;
  }

  /** Centre of area; the mean of the corners when the outline has no area. */
  public static Point centroid(List<Point> outline) {
    Point origin = outline.getFirst();
    double doubled = 0;
    double x = 0;
    double y = 0;
    double meanX = 0;
    double meanY = 0;
    for (Point corner : outline) {
      meanX += (corner.xMetres() - origin.xMetres()) / outline.size();
      meanY += (corner.yMetres() - origin.yMetres()) / outline.size();
    }
    for (int i = 1; i + 1 < outline.size(); i++) {
      Point b = outline.get(i);
      Point c = outline.get(i + 1);
      double area = turn(origin, b, c);
      doubled += area;
      x += area * (b.xMetres() + c.xMetres() - 2 * origin.xMetres()) / 3;
      y += area * (b.yMetres() + c.yMetres() - 2 * origin.yMetres()) / 3;
    }
    return doubled == 0
        ? new Point(origin.xMetres() + meanX, origin.yMetres() + meanY)
        : new Point(origin.xMetres() + x / doubled, origin.yMetres() + y / doubled);
  }

  /**
   * Where along a to b the point nearest to p lies: 0 at a, 1 at b, beyond for points past the
   * ends.
   */
  public static double parameter(Point a, Point b, Point p) {
    double dx = b.xMetres() - a.xMetres();
    double dy = b.yMetres() - a.yMetres();
    double squared = dx * dx + dy * dy;
    return squared == 0
        ? 0
        : ((p.xMetres() - a.xMetres()) * dx + (p.yMetres() - a.yMetres()) * dy) / squared;
  }

  /** The point at a parameter along a to b. */
  public static Point along(Point a, Point b, double parameter) {
    return new Point(
        a.xMetres() + (b.xMetres() - a.xMetres()) * parameter,
        a.yMetres() + (b.yMetres() - a.yMetres()) * parameter);
  }

  /** Distance from p to the straight piece from a to b. */
  public static double distance(Point a, Point b, Point p) {
    double parameter = Math.clamp(parameter(a, b, p), 0.0, 1.0);
    return along(a, b, parameter).distanceMetres(p);
  }

  /** Whether the pieces a-b and c-d cross at an inner point of both. */
  public static boolean cross(Point a, Point b, Point c, Point d) {
    return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
  }

  /** The point where the pieces a-b and c-d cross; they must. */
  public static Point crossing(Point a, Point b, Point c, Point d) {
    double fromC = turn(a, b, c);
    double fromD = turn(a, b, d);
    return along(c, d, fromC / (fromC - fromD));
  }

  /** Whether the upright boxes round a-b and c-d have a point in common. */
  public static boolean boxesMeet(Point a, Point b, Point c, Point d) {
    return Math.max(a.xMetres(), b.xMetres()) >= Math.min(c.xMetres(), d.xMetres())
        && Math.min(a.xMetres(), b.xMetres()) <= Math.max(c.xMetres(), d.xMetres())
        && Math.max(a.yMetres(), b.yMetres()) >= Math.min(c.yMetres(), d.yMetres())
        && Math.min(a.yMetres(), b.yMetres()) <= Math.max(c.yMetres(), d.yMetres());
  }

  /** Distance between the straight pieces a-b and c-d. */
  public static double distance(Point a, Point b, Point c, Point d) {
    if (cross(a, b, c, d)) {
      return 0;
    }
    return Math.min(
        Math.min(distance(a, b, c), distance(a, b, d)),
        Math.min(distance(c, d, a), distance(c, d, b)));
  }

  /** Distance from p to the nearest point of an outline. */
  public static double distanceToOutline(List<Point> outline, Point p) {
    double least = Double.POSITIVE_INFINITY;
    Point previous = outline.getLast();
    for (Point corner : outline) {
      least = Math.min(least, distance(previous, corner, p));
      previous = corner;
    }
    return least;
  }

  /** Whether p is inside, by counting edges to its right; undecided on the outline itself. */
  public static boolean contains(List<Point> outline, Point p) {
    boolean inside = false;
    Point a = outline.getLast();
    for (Point b : outline) {
      if (b.yMetres() > p.yMetres() != a.yMetres() > p.yMetres()) {
        double x =
            a.xMetres()
                + (p.yMetres() - a.yMetres())
                    * (b.xMetres() - a.xMetres())
                    / (b.yMetres() - a.yMetres());
        if (p.xMetres() < x) {
          inside = !inside;
        }
      }
      a = b;
    }
    return inside;
  }
}
