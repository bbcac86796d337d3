package keenward.core.building.walking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.stream.IntStream;
import keenward.core.building.FloorGeometry;
import keenward.core.building.RoomGeometry;
import keenward.core.building.WallPieces;
import keenward.core.building.plane.Barrier;
import keenward.core.building.plane.Barriers;
import keenward.core.building.plane.Polygons;
import keenward.core.building.plane.SeenArea;
import keenward.core.building.plane.Shapes;
import keenward.core.building.plane.Sweep;
import keenward.core.plan.Furniture;
import keenward.core.plan.Point;

/**
 * Where the middle of a walker can be on one floor: the rooms, less a body's half width along walls
 * and furniture. A shortest way there is taut: it is straight between corners of that area round
 * which it turns. So it is searched on the graph of corners that see one another (visibility graph;
 * Lozano-Pérez and Wesley 1979, cited from memory), by A*, and what a corner sees is swept only
 * when the search comes to it.
 */
final class FreeFloor {

  /** Corners are kept so far off the edge, so that none of them stands on a barrier. */
  private static final double CLEAR_METRES = 1e-4;

  private static final double FIRST_SIGHT_METRES = 12;

  /** Farther than any coordinate of a plan. */
  private static final double MOST_SIGHT_METRES = 1e6;

  /** Sines below this are as good as straight. */
  private static final double STRAIGHT = 1e-3;

  private final List<List<Point>> areas;
  private final Barriers edges;
  private final List<Corner> corners = new ArrayList<>();
  private final Map<Integer, int[]> seen = new HashMap<>();

  /**
   * A corner round which a way can turn.
   *
   * @param at the corner, drawn off the edge
   * @param before the corner before it on the edge
   * @param after the corner after it
   */
  private record Corner(Point at, Point before, Point after) {

    /** Whether a straight way through here and a place passes by the edge on one side. */
    boolean touches(Point from) {
      double one = side(from, before);
      double other = side(from, after);
      return one * other >= 0 || Math.min(Math.abs(one), Math.abs(other)) < STRAIGHT;
    }

    /** Sine of the angle at which the edge to a neighbour leaves the line from a place. */
    private double side(Point from, Point neighbour) {
      double x = at.xMetres() - from.xMetres();
      double y = at.yMetres() - from.yMetres();
      double alongX = neighbour.xMetres() - at.xMetres();
      double alongY = neighbour.yMetres() - at.yMetres();
      double lengths = Math.hypot(x, y) * Math.hypot(alongX, alongY);
      return lengths == 0 ? 0 : (x * alongY - y * alongX) / lengths;
    }
  }

  private record Reached(double atLeastMetres, double metres, int corner) {}

  private FreeFloor(List<List<Point>> areas) {
    this.areas = areas;
    List<Barrier> sides = new ArrayList<>();
    for (List<Point> ring : areas) {
      sides.addAll(WallPieces.sides(ring));
      addCorners(ring);
    }
    edges = Barriers.of(sides);
  }

  /**
   * The free area of a floor.
   *
   * @param avoided places and openings that the walker keeps away from
   */
  static FreeFloor of(FloorGeometry floor, Avoided avoided) {
    List<Barrier> walls =
        floor.walls().stream()
            .flatMap(wall ->
                WallPieces.of(
                    wall,
                    floor,
                    opening -> opening.isInnerWay() && !avoided.openings().contains(opening.name()))
                    .stream())
            .toList();
    List<List<Point>> solids =
        new ArrayList<>(avoided.areas().getOrDefault(floor.name(), List.of()));
    floor.floor().furniture().stream().map(Furniture::outline).forEach(solids::add);
    return new FreeFloor(
        Shapes.freeOf(
            floor.rooms().stream().map(RoomGeometry::outline).toList(),
            walls,
            solids,
            WalkingMap.BODY_METRES / 2));
  }

  /**
   * The corners of a ring round which a way can turn. The free area lies to the left of every ring.
   */
  private void addCorners(List<Point> ring) {
    for (int i = 0; i < ring.size(); i++) {
      Point before = ring.get((i + ring.size() - 1) % ring.size());
      Point corner = ring.get(i);
      Point after = ring.get((i + 1) % ring.size());
      double backX = before.xMetres() - corner.xMetres();
      double backY = before.yMetres() - corner.yMetres();
      double onX = after.xMetres() - corner.xMetres();
      double onY = after.yMetres() - corner.yMetres();
      double back = Math.hypot(backX, backY);
      double on = Math.hypot(onX, onY);
      boolean turnsRight = backX * onY - backY * onX > 1e-9 * back * on;
      if (turnsRight) {
        double awayX = -(backX / back + onX / on);
        double awayY = -(backY / back + onY / on);
        double away = Math.hypot(awayX, awayY) / CLEAR_METRES;
        corners.add(
            new Corner(
                new Point(corner.xMetres() + awayX / away, corner.yMetres() + awayY / away),
                before,
                after));
      }
    }
  }

  /** How many corners a way can turn round. */
  int corners() {
    return corners.size();
  }

  /**
   * The nearest place to one at which a walker can stand.
   *
   * @param room the room in which to stand; empty for any
   * @param mostMetres how far from it at most
   */
  Optional<Point> near(Point place, Optional<RoomGeometry> room, double mostMetres) {
    if (isFree(place, room)) {
      return Optional.of(place);
    }
    record Candidate(Point at, double metres) {}
    return areas.stream()
        .flatMap(ring -> WallPieces.sides(ring).stream())
        .map(side -> justInside(side, nearest(side, place)))
        .map(at -> new Candidate(at, at.distanceMetres(place)))
        .filter(each -> each.metres() <= mostMetres)
        .sorted((one, other) -> Double.compare(one.metres(), other.metres()))
        .map(Candidate::at)
        .filter(at -> isFree(at, room))
        .findFirst();
  }

  private boolean isFree(Point place, Optional<RoomGeometry> room) {
    return room.map(each -> each.contains(place)).orElse(true) && isFree(place);
  }

  /** Even-odd over all rings: inside an outer one and in no hole. */
  private boolean isFree(Point place) {
    boolean inside = false;
    for (List<Point> ring : areas) {
      inside ^= Polygons.contains(ring, place);
    }
    return inside;
  }

  private static Point nearest(Barrier side, Point place) {
    double part = Math.clamp(Polygons.parameter(side.from(), side.to(), place), 0.0, 1.0);
    return Polygons.along(side.from(), side.to(), part);
  }

  private static Point justInside(Barrier side, Point at) {
    double x = side.to().xMetres() - side.from().xMetres();
    double y = side.to().yMetres() - side.from().yMetres();
    double length = Math.hypot(x, y);
    return length == 0
        ? at
        : new Point(
            at.xMetres() - y / length * CLEAR_METRES, at.yMetres() + x / length * CLEAR_METRES);
  }

  /**
   * The shortest way between two places at which a walker can stand, both included; empty when
   * there is none.
   */
  Optional<List<Point>> way(Point from, Point to) {
    SeenArea fromHere = sight(from);
    if (from.equals(to) || fromHere.sees(to)) {
      return Optional.of(List.of(from, to));
    }
    SeenArea toHere = sight(to);
    double[] least = new double[corners.size()];
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    int[] cameFrom = new int[corners.size()];
    Arrays.fill(cameFrom, -1);
    PriorityQueue<Reached> open =
        new PriorityQueue<>((one, other) ->
            one.atLeastMetres() != other.atLeastMetres()
                ? Double.compare(one.atLeastMetres(), other.atLeastMetres())
                : Integer.compare(one.corner(), other.corner()));
    for (int corner : seenFrom(from, fromHere)) {
      Point at = corners.get(corner).at();
      least[corner] = from.distanceMetres(at);
      open.add(new Reached(least[corner] + at.distanceMetres(to), least[corner], corner));
    }
    while (!open.isEmpty()) {
      Reached here = open.remove();
      if (here.metres() > least[here.corner()]) {
        continue;
      }
      Point at = corners.get(here.corner()).at();
      // What a straight line to the end would make of it, it is; no other way can be shorter.
      if (toHere.sees(at)) {
        return Optional.of(points(from, to, here.corner(), cameFrom));
      }
      for (int next : seenFrom(here.corner())) {
        Point there = corners.get(next).at();
        double metres = here.metres() + at.distanceMetres(there);
        if (metres < least[next]) {
          least[next] = metres;
          cameFrom[next] = here.corner();
          open.add(new Reached(metres + there.distanceMetres(to), metres, next));
        }
      }
    }
    return Optional.empty();
  }

  private List<Point> points(Point from, Point to, int last, int[] cameFrom) {
    List<Point> points = new ArrayList<>(List.of(to));
    for (int corner = last; corner >= 0; corner = cameFrom[corner]) {
      points.add(corners.get(corner).at());
    }
    points.add(from);
    Collections.reverse(points);
    return points;
  }

  private int[] seenFrom(int corner) {
    return seen.computeIfAbsent(
        corner,
        number -> {
          Corner here = corners.get(number);
          return Arrays.stream(seenFrom(here.at(), sight(here.at())))
              .filter(other -> other != number && here.touches(corners.get(other).at()))
              .toArray();
        });
  }

  private int[] seenFrom(Point place, SeenArea sight) {
    return IntStream.range(0, corners.size())
        .filter(i -> corners.get(i).touches(place) && sight.sees(corners.get(i).at()))
        .toArray();
  }

  /** All that is seen from a place: sight reaches farther until it ends at an edge everywhere. */
  private SeenArea sight(Point place) {
    for (double metres = FIRST_SIGHT_METRES; ; metres *= 4) {
      SeenArea sight = Sweep.from(place, metres, 0, SeenArea.FULL_TURN, edges);
      if (metres > MOST_SIGHT_METRES || sight.edge().stream().noneMatch(SeenArea.Piece::isArc)) {
        return sight;
      }
    }
  }
}
