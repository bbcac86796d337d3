package keenward.core.building.walking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import keenward.core.building.Building;
import keenward.core.building.FloorGeometry;
import keenward.core.building.OpeningPlace;
import keenward.core.building.WallSegment;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.Point;
import keenward.core.plan.RoomUse;
import keenward.core.plan.SitePlan;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

/**
 * Shortest walks against Dijkstra of JGraphT (jgrapht-core 1.5.3) on a fine grid, whose steps keep
 * half a body away from all that is in the way by the JTS Topology Suite (jts-core 1.20.0).
 */
class WalkingAgainstGridTest {

  private static final GeometryFactory FACTORY = new GeometryFactory();
  private static final double STEP_METRES = 0.1;
  private static final double BODY = WalkingMap.BODY_METRES / 2;

  /** Steps to 16 directions: a straight way is at most 2.8 % longer along them. */
  private static final int[][] STEPS = {
    {1, 0}, {0, 1}, {1, 1}, {1, -1}, {2, 1}, {1, 2}, {2, -1}, {1, -2}
  };

  private static final double GRID_STRETCH = 1.028;

  /** A body slimmer by a grid step each side gets through on the grid wherever the real one can. */
  private static final double SLIM = BODY - STEP_METRES;

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void isNeverLongerThanTheGridsAndAsLongUpToTheGridsError(long seed) {
    Random random = new Random(seed);
    SitePlan plan = rooms(random);
    Building building = Building.of(plan);
    assertThat(building.problems()).isEmpty();
    FloorGeometry floor = building.floors().getFirst();
    Geometry inTheWay = inTheWay(floor);
    SimpleWeightedGraph<Point, DefaultWeightedEdge> grid = grid(inTheWay, BODY + 1e-4);
    SimpleWeightedGraph<Point, DefaultWeightedEdge> slim = grid(inTheWay, SLIM);
    List<Point> standing = new ArrayList<>(grid.vertexSet());
    WalkingMap map = WalkingMap.of(plan, building);
    int found = 0;
    for (int i = 0; i < 12; i++) {
      Point from = standing.get(random.nextInt(standing.size()));
      Point to = standing.get(random.nextInt(standing.size()));
      GraphPath<Point, DefaultWeightedEdge> onGrid =
          DijkstraShortestPath.findPathBetween(grid, from, to);
      Optional<WalkingRoute> route = map.search(at(from), at(to)).find();
      if (onGrid == null) {
        continue;
      }
      double slimMetres = DijkstraShortestPath.findPathBetween(slim, from, to).getWeight();
      assertThat(route).as("from %s to %s", from, to).isPresent();
      found++;
      assertThat(route.get().metres())
          .as("from %s to %s", from, to)
          .isLessThanOrEqualTo(onGrid.getWeight() + 1e-3)
          .isGreaterThanOrEqualTo(slimMetres / GRID_STRETCH - 0.1);
      keepsClear(route.get(), inTheWay);
    }
    assertThat(found).isGreaterThan(5);
  }

  /** Corners are rounded by chords, which come at most 8 % of the half width too near. */
  private static void keepsClear(WalkingRoute route, Geometry inTheWay) {
    for (WalkingRoute.Leg leg : route.legs()) {
      List<Point> points = ((WalkingRoute.Leg.Level) leg).points();
      for (int i = 1; i < points.size(); i++) {
        assertThat(line(points.get(i - 1), points.get(i)).distance(inTheWay))
            .as("%s to %s", points.get(i - 1), points.get(i))
            .isGreaterThan(BODY * 0.92 - 1e-9);
      }
    }
  }

  /** Four by three rooms of uneven size, most neighbours joined by doors, things in each. */
  private static SitePlan rooms(Random random) {
    double[] x = {0, 3 + random.nextDouble(), 6 + random.nextDouble(), 9 + random.nextDouble(), 13};
    double[] y = {0, 3 + random.nextDouble(), 6 + random.nextDouble(), 10};
    return PlanBuilder.site()
        .floor(
            "Ground",
            floor -> {
              for (int column = 0; column < 4; column++) {
                for (int row = 0; row < 3; row++) {
                  floor.room(
                      name(column, row),
                      RoomUse.OFFICE,
                      x[column],
                      y[row],
                      x[column + 1],
                      y[row + 1]);
                }
              }
              for (int column = 0; column < 4; column++) {
                for (int row = 0; row < 3; row++) {
                  if (column < 3 && random.nextInt(4) > 0) {
                    floor.opening(
                        "East " + column + row,
                        random.nextBoolean() ? OpeningKind.DOOR : OpeningKind.DOORWAY,
                        name(column, row),
                        name(column + 1, row));
                  }
                  if (row < 2 && random.nextInt(4) > 0) {
                    floor.opening(
                        "North " + column + row,
                        OpeningKind.DOOR,
                        name(column, row),
                        name(column, row + 1));
                  }
                  double west = x[column] + 0.8 + random.nextDouble();
                  double south = y[row] + 0.9 + random.nextDouble() * 0.8;
                  floor.furniture(
                      "Thing " + column + row,
                      "0.7 m",
                      west,
                      south,
                      west + 0.2 + random.nextDouble(),
                      south + 0.2 + random.nextDouble() * 0.8);
                }
              }
            })
        .build();
  }

  private static String name(int column, int row) {
    return "Room " + column + row;
  }

  private static Geometry inTheWay(FloorGeometry floor) {
    List<Geometry> all = new ArrayList<>();
    for (WallSegment wall : floor.walls()) {
      Geometry left = line(wall.start(), wall.end());
      for (OpeningPlace opening : floor.openings()) {
        if (opening.wall().equals(wall)) {
          // A hair wider than the line, since rounding puts jambs beside it.
          left = left.difference(line(opening.leftJamb(), opening.rightJamb()).buffer(1e-9, 1));
        }
      }
      all.add(left);
    }
    floor
        .floor()
        .furniture()
        .forEach(thing -> {
          Coordinate[] ring = new Coordinate[thing.outline().size() + 1];
          for (int i = 0; i < ring.length; i++) {
            Point corner = thing.outline().get(i % thing.outline().size());
            ring[i] = new Coordinate(corner.xMetres(), corner.yMetres());
          }
          all.add(FACTORY.createPolygon(ring));
        });
    return FACTORY.buildGeometry(all);
  }

  private static SimpleWeightedGraph<Point, DefaultWeightedEdge> grid(
      Geometry inTheWay, double clear) {
    // Many chords, so that the margin is round as the body is.
    PreparedGeometry taken = PreparedGeometryFactory.prepare(inTheWay.buffer(clear, 64));
    SimpleWeightedGraph<Point, DefaultWeightedEdge> grid =
        new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
    Map<List<Integer>, Point> nodes = new HashMap<>();
    for (int i = 0; i < 130; i++) {
      for (int j = 0; j < 100; j++) {
        Point point = new Point((i + 0.5) * STEP_METRES, (j + 0.5) * STEP_METRES);
        if (!taken.intersects(line(point, point))) {
          nodes.put(List.of(i, j), point);
          grid.addVertex(point);
        }
      }
    }
    nodes.forEach((cell, point) -> {
      for (int[] step : STEPS) {
        Point next = nodes.get(List.of(cell.get(0) + step[0], cell.get(1) + step[1]));
        if (next != null && !taken.intersects(line(point, next))) {
          grid.setEdgeWeight(grid.addEdge(point, next), point.distanceMetres(next));
        }
      }
    });
    return grid;
  }

  private static Geometry line(Point from, Point to) {
    return from.equals(to)
        ? FACTORY.createPoint(new Coordinate(from.xMetres(), from.yMetres()))
        : FACTORY.createLineString(
            new Coordinate[] {
              new Coordinate(from.xMetres(), from.yMetres()),
              new Coordinate(to.xMetres(), to.yMetres())
            });
  }

  private static Place at(Point point) {
    return new Place(point.toString(), "Ground", Optional.empty(), point, Place.Kind.STAIR);
  }
}
