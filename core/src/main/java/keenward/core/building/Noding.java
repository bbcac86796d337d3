package keenward.core.building;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import keenward.core.building.plane.Polygons;
import keenward.core.plan.Point;

/**
 * Outlines brought onto common nodes, so that edges which coincide within the snap distance have
 * the very same ends.
 *
 * <p>Corners within the snap distance of an earlier corner become that corner. A corner within the
 * snap distance of an edge moves onto it, square to the edge, so that the edge stays straight; then
 * every edge is split at the corners that lie on it. What comes first in the file wins, so the
 * result depends on nothing but the file.
 */
final class Noding {

  private final List<Point> nodes = new ArrayList<>();
  private final List<int[]> corners = new ArrayList<>();
  private final List<int[]> cycles = new ArrayList<>();

  private record Cell(long column, long row) {}

  private record OnEdge(int node, double parameter) {}

  private record Edge(int from, int to) {

    /** Whether the node is one of its ends; an edge without length counts as all ends. */
    boolean endsAt(int node) {
      return from == node || to == node || from == to;
    }
  }

  private Noding() {}

  /** Brings outlines onto common nodes; corners must be finite. */
  static Noding of(List<List<Point>> outlines, double snapMetres) {
    Noding noding = new Noding();
    noding.joinCorners(outlines, snapMetres);
    // Twice, because an edge may itself move in the first pass.
    noding.moveOntoEdges(snapMetres);
    noding.moveOntoEdges(snapMetres);
    noding.splitEdges(snapMetres);
    return noding;
  }

  Point node(int number) {
    return nodes.get(number);
  }

  /**
   * The node of each corner of an outline, as written; equal neighbours are corners that were
   * joined.
   */
  int[] corners(int outline) {
    return corners.get(outline);
  }

  /** The nodes round an outline in the order written, those of touching corners included. */
  int[] cycle(int outline) {
    return cycles.get(outline);
  }

  /** The points round an outline. */
  List<Point> points(int outline) {
    List<Point> points = new ArrayList<>();
    for (int node : cycles.get(outline)) {
      points.add(nodes.get(node));
    }
    return points;
  }

  private void joinCorners(List<List<Point>> outlines, double snap) {
    Map<Cell, List<Integer>> grid = new HashMap<>();
    for (List<Point> outline : outlines) {
      int[] numbers = new int[outline.size()];
      for (int i = 0; i < numbers.length; i++) {
        numbers[i] = nodeNear(grid, outline.get(i), snap);
      }
      corners.add(numbers);
    }
  }

  private int nodeNear(Map<Cell, List<Integer>> grid, Point corner, double snap) {
    long column = (long) Math.floor(corner.xMetres() / snap);
    long row = (long) Math.floor(corner.yMetres() / snap);
    int nearest = -1;
    double least = snap;
    for (long x = column - 1; x <= column + 1; x++) {
      for (long y = row - 1; y <= row + 1; y++) {
        for (int candidate : grid.getOrDefault(new Cell(x, y), List.of())) {
          double distance = nodes.get(candidate).distanceMetres(corner);
          if (distance < least || (distance == least && (nearest < 0 || candidate < nearest))) {
            nearest = candidate;
            least = distance;
          }
        }
      }
    }
    if (nearest >= 0) {
      return nearest;
    }
    grid.computeIfAbsent(new Cell(column, row), ignored -> new ArrayList<>()).add(nodes.size());
    nodes.add(corner);
    return nodes.size() - 1;
  }

  private List<Edge> edges() {
    List<Edge> edges = new ArrayList<>();
    for (int[] outline : corners) {
      for (int i = 0; i < outline.length; i++) {
        edges.add(new Edge(outline[i], outline[(i + 1) % outline.length]));
      }
    }
    return edges;
  }

  private Strips index(List<Edge> edges, double snap) {
    double left = nodes.stream().mapToDouble(Point::xMetres).min().orElse(0);
    double right = nodes.stream().mapToDouble(Point::xMetres).max().orElse(0);
    Strips strips = new Strips(left, right, edges.size());
    // Twice the snap distance, because an end may move while nodes are looked up.
    double reach = 2 * snap;
    for (int i = 0; i < edges.size(); i++) {
      double a = nodes.get(edges.get(i).from()).xMetres();
      double b = nodes.get(edges.get(i).to()).xMetres();
      strips.add(i, Math.min(a, b) - reach, Math.max(a, b) + reach);
    }
    return strips;
  }

  private void moveOntoEdges(double snap) {
    List<Edge> edges = edges();
    Strips strips = index(edges, snap);
    for (int node = 0; node < nodes.size(); node++) {
      Point place = nodes.get(node);
      Point moved = place;
      double least = snap;
      for (int number : strips.at(place.xMetres())) {
        Edge edge = edges.get(number);
        if (edge.endsAt(node) || !isNearBox(edge, place, snap)) {
          continue;
        }
        Point start = nodes.get(edge.from());
        Point end = nodes.get(edge.to());
        double parameter = Polygons.parameter(start, end, place);
        if (parameter > 0 && parameter < 1) {
          Point foot = Polygons.along(start, end, parameter);
          double distance = foot.distanceMetres(place);
          if (distance < least) {
            least = distance;
            moved = foot;
          }
        }
      }
      nodes.set(node, moved);
    }
  }

  private void splitEdges(double snap) {
    List<Edge> edges = edges();
    List<List<OnEdge>> nodesOnEdges = nodesOn(edges, snap);
    int edge = 0;
    for (int[] outline : corners) {
      List<Integer> cycle = new ArrayList<>();
      for (int corner : outline) {
        append(cycle, corner);
        for (OnEdge onEdge : nodesOnEdges.get(edge++)) {
          append(cycle, onEdge.node());
        }
      }
      while (cycle.size() > 1 && cycle.getFirst().equals(cycle.getLast())) {
        cycle.removeLast();
      }
      cycles.add(cycle.stream().mapToInt(Integer::intValue).toArray());
    }
  }

  private List<List<OnEdge>> nodesOn(List<Edge> edges, double snap) {
    Strips strips = index(edges, snap);
    List<List<OnEdge>> found = new ArrayList<>();
    edges.forEach(ignored -> found.add(new ArrayList<>()));
    for (int node = 0; node < nodes.size(); node++) {
      Point place = nodes.get(node);
      for (int number : strips.at(place.xMetres())) {
        Edge edge = edges.get(number);
        if (edge.endsAt(node) || !isNearBox(edge, place, snap)) {
          continue;
        }
        Point start = nodes.get(edge.from());
        Point end = nodes.get(edge.to());
        double parameter = Polygons.parameter(start, end, place);
        if (parameter > 0 && parameter < 1 && Polygons.distance(start, end, place) <= snap) {
          found.get(number).add(new OnEdge(node, parameter));
        }
      }
    }
    for (List<OnEdge> onEdge : found) {
      onEdge.sort(Comparator.comparingDouble(OnEdge::parameter).thenComparingInt(OnEdge::node));
    }
    return found;
  }

  private boolean isNearBox(Edge edge, Point p, double snap) {
    Point start = nodes.get(edge.from());
    Point end = nodes.get(edge.to());
    return p.xMetres() >= Math.min(start.xMetres(), end.xMetres()) - snap
        && p.xMetres() <= Math.max(start.xMetres(), end.xMetres()) + snap
        && p.yMetres() >= Math.min(start.yMetres(), end.yMetres()) - snap
        && p.yMetres() <= Math.max(start.yMetres(), end.yMetres()) + snap;
  }

  private static void append(List<Integer> cycle, int node) {
    if (cycle.isEmpty() || cycle.getLast() != node) {
      cycle.add(node);
    }
  }
}
