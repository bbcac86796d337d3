package keenward.core.building;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import keenward.core.building.plane.Polygons;
import keenward.core.plan.Point;

/** Finds rooms that have floor in common. */
final class RoomOverlap {

  private final List<Outline> outlines = new ArrayList<>();

  private record Outline(
      List<Integer> cycle, List<Point> points, Point least, Point greatest, Point inside) {}

  /** Prepares outlines, which must be sound and noded together. */
  RoomOverlap(Noding noding, int count) {
    for (int i = 0; i < count; i++) {
      List<Point> points = noding.points(i);
      outlines.add(
          new Outline(
              Arrays.stream(noding.cycle(i)).boxed().toList(),
              points,
              least(points),
              greatest(points),
              LabelPoint.of(points)));
    }
  }

  /** A place on which both outlines lay claim. */
  Optional<Point> find(int first, int second) {
    Outline one = outlines.get(first);
    Outline other = outlines.get(second);
    if (!Polygons.boxesMeet(one.least(), one.greatest(), other.least(), other.greatest())) {
      return Optional.empty();
    }
    List<Point> onePoints = one.points();
    List<Point> otherPoints = other.points();
    for (int i = 0; i < onePoints.size(); i++) {
      Point a = onePoints.get(i);
      Point b = onePoints.get((i + 1) % onePoints.size());
      for (int j = 0; j < otherPoints.size(); j++) {
        Point c = otherPoints.get(j);
        Point d = otherPoints.get((j + 1) % otherPoints.size());
        if (Polygons.boxesMeet(a, b, c, d) && Polygons.cross(a, b, c, d)) {
          return Optional.of(Polygons.crossing(a, b, c, d));
        }
      }
    }
    // Without a crossing, each split edge lies wholly inside, outside or on the other outline.
    return edgeInside(one, other)
        .or(() -> edgeInside(other, one))
        .or(() -> Optional.of(one.inside()).filter(inside -> contains(other, inside)));
  }

  private static boolean contains(Outline outline, Point place) {
    return Polygons.contains(outline.points(), place);
  }

  private static Optional<Point> edgeInside(Outline one, Outline other) {
    List<Integer> cycle = one.cycle();
    List<Point> points = one.points();
    List<Integer> otherCycle = other.cycle();
    Set<Long> edges = new HashSet<>();
    for (int i = 0; i < otherCycle.size(); i++) {
      edges.add(key(otherCycle.get(i), otherCycle.get((i + 1) % otherCycle.size())));
    }
    for (int i = 0; i < cycle.size(); i++) {
      int next = (i + 1) % cycle.size();
      if (edges.contains(key(cycle.get(i), cycle.get(next)))) {
        continue;
      }
      Point middle = Polygons.along(points.get(i), points.get(next), 0.5);
      if (contains(other, middle)) {
        return Optional.of(middle);
      }
    }
    return Optional.empty();
  }

  private static long key(int a, int b) {
    return (long) Math.min(a, b) << 32 | Math.max(a, b);
  }

  private static Point least(List<Point> points) {
    return new Point(
        points.stream().mapToDouble(Point::xMetres).min().orElseThrow(),
        points.stream().mapToDouble(Point::yMetres).min().orElseThrow());
  }

  private static Point greatest(List<Point> points) {
    return new Point(
        points.stream().mapToDouble(Point::xMetres).max().orElseThrow(),
        points.stream().mapToDouble(Point::yMetres).max().orElseThrow());
  }
}
