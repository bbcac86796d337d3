package keenward.core.building;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import keenward.core.building.plane.Polygons;
import keenward.core.plan.Point;

/**
 * Whether an outline is sound. It may touch itself, at a corner or along an edge walked back (so
 * that it can go round a room inside it), but may not cross itself, walk an edge twice the same
 * way, or turn straight back.
 */
final class SelfCrossing {

  private final Noding noding;
  private final int[] cycle;

  private record Step(int from, int to) {}

  private SelfCrossing(Noding noding, int[] cycle) {
    this.noding = noding;
    this.cycle = cycle;
  }

  /** A place where the outline is unsound. */
  static Optional<Point> find(Noding noding, int outline) {
    int[] cycle = noding.cycle(outline);
    if (cycle.length < 3) {
      return Optional.of(noding.node(cycle[0]));
    }
    SelfCrossing check = new SelfCrossing(noding, cycle);
    return check.findRepeatedStep().or(check::findCrossingAtNode).or(check::findCrossingEdges);
  }

  private int at(int index) {
    return cycle[Math.floorMod(index, cycle.length)];
  }

  private Optional<Point> findRepeatedStep() {
    Set<Step> steps = new HashSet<>();
    for (int i = 0; i < cycle.length; i++) {
      if (!steps.add(new Step(at(i), at(i + 1))) || at(i - 1) == at(i + 1)) {
        return Optional.of(noding.node(at(i)));
      }
    }
    return Optional.empty();
  }

  private Optional<Point> findCrossingAtNode() {
    Map<Integer, List<Integer>> visits = new HashMap<>();
    for (int i = 0; i < cycle.length; i++) {
      List<Integer> earlier = visits.computeIfAbsent(at(i), ignored -> new ArrayList<>());
      for (int other : earlier) {
        if (crossAtNode(i, other)) {
          return Optional.of(noding.node(at(i)));
        }
      }
      earlier.add(i);
    }
    return Optional.empty();
  }

  /**
   * Whether two visits of a node cross there: the ways in and out of one lie on different sides of
   * the other.
   */
  private boolean crossAtNode(int one, int other) {
    int in = at(one - 1);
    int out = at(one + 1);
    int otherIn = at(other - 1);
    int otherOut = at(other + 1);
    if (otherIn == in || otherIn == out || otherOut == in || otherOut == out) {
      return false;
    }
    Point node = noding.node(at(one));
    double start = direction(node, in);
    double span = anticlockwise(start, direction(node, out));
    return anticlockwise(start, direction(node, otherIn)) < span
        != anticlockwise(start, direction(node, otherOut)) < span;
  }

  private double direction(Point from, int to) {
    Point end = noding.node(to);
    return Math.atan2(end.yMetres() - from.yMetres(), end.xMetres() - from.xMetres());
  }

  private static double anticlockwise(double from, double to) {
    double angle = to - from;
    return angle < 0 ? angle + 2 * Math.PI : angle;
  }

  private Optional<Point> findCrossingEdges() {
    double left = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    for (int node : cycle) {
      left = Math.min(left, noding.node(node).xMetres());
      right = Math.max(right, noding.node(node).xMetres());
    }
    Strips strips = new Strips(left, right, cycle.length);
    for (int i = 0; i < cycle.length; i++) {
      Point a = noding.node(at(i));
      Point b = noding.node(at(i + 1));
      double from = Math.min(a.xMetres(), b.xMetres());
      double to = Math.max(a.xMetres(), b.xMetres());
      int[] earlier = strips.between(from, to).toArray();
      for (int j : earlier) {
        Point c = noding.node(at(j));
        Point d = noding.node(at(j + 1));
        if (Polygons.boxesMeet(a, b, c, d) && Polygons.cross(a, b, c, d)) {
          return Optional.of(Polygons.crossing(a, b, c, d));
        }
      }
      strips.add(i, from, to);
    }
    return Optional.empty();
  }
}
