package keenward.core.building;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import keenward.core.plan.Point;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

/**
 * Random floors cut into rectangles, some of them joined to angular rooms, against the JTS Topology
 * Suite (jts-core 1.20.0, a general-purpose geometry library) on the same outlines.
 */
class PartitionPropertyTest {

  private static final GeometryFactory JTS = new GeometryFactory();
  private static final int FLOORS = 60;

  private record Box(double left, double bottom, double right, double top) {}

  @Test
  void areasAddUpAndEveryPieceOfWallOccursOnce() {
    for (long seed = 1; seed <= FLOORS; seed++) {
      Random random = new Random(seed);
      List<Polygon> rooms = rooms(random);
      Geometry whole = rooms.getFirst();
      for (Polygon room : rooms) {
        whole = whole.union(room);
      }
      Building building = sketch(rooms, random, 0).build();
      FloorGeometry floor = building.floors().getFirst();
      String name = "seed " + seed;
      assertThat(building.problems()).as(name).isEmpty();
      assertThat(floor.rooms().stream().mapToDouble(RoomGeometry::areaSquareMetres).sum())
          .as(name)
          .isCloseTo(whole.getArea(), within(1e-9));
      double outer = length(floor, true);
      double inner = length(floor, false);
      double allEdges = rooms.stream().mapToDouble(Geometry::getLength).sum();
      assertThat(outer).as(name).isCloseTo(whole.getLength(), within(1e-9));
      assertThat(inner).as(name).isCloseTo((allEdges - whole.getLength()) / 2, within(1e-9));
      for (int i = 0; i < rooms.size(); i++) {
        for (int j = i + 1; j < rooms.size(); j++) {
          double shared =
              rooms.get(i).getBoundary().intersection(rooms.get(j).getBoundary()).getLength();
          assertThat(
                  floor.wallsBetween("R" + i, "R" + j).stream()
                      .mapToDouble(WallSegment::lengthMetres)
                      .sum())
              .as(name + " R" + i + " R" + j)
              .isCloseTo(shared, within(1e-9));
        }
      }
    }
  }

  @Test
  void bothRoomsOfAWallSeeItUnderItsOwnNumberOnce() {
    for (long seed = 1; seed <= FLOORS; seed++) {
      List<Polygon> rooms = rooms(new Random(seed));
      FloorGeometry floor = sketch(rooms, new Random(seed), 0).build().floors().getFirst();
      for (WallSegment wall : floor.walls()) {
        for (String room :
            wall.isOuter() ? List.of(wall.room()) : List.of(wall.room(), wall.beyond())) {
          String other = room.equals(wall.room()) ? wall.beyond() : wall.room();
          assertThat(floor.wallsBetween(room, other).get(wall.edgeFrom(room) - 1))
              .as("seed " + seed)
              .isEqualTo(wall);
        }
      }
    }
  }

  @Test
  void cornersAstrayByLessThanHalfTheSnapDistanceGiveTheSameWalls() {
    for (long seed = 1; seed <= FLOORS; seed++) {
      List<Polygon> rooms = rooms(new Random(seed));
      FloorGeometry exact = sketch(rooms, new Random(seed), 0).build().floors().getFirst();
      Building building = sketch(rooms, new Random(seed), 0.017).build();
      FloorGeometry astray = building.floors().getFirst();
      assertThat(building.problems()).as("seed " + seed).isEmpty();
      assertThat(astray.walls().stream().map(PartitionPropertyTest::sides).distinct().sorted())
          .as("seed " + seed)
          .isEqualTo(
              exact.walls().stream()
                  .map(PartitionPropertyTest::sides)
                  .distinct()
                  .sorted()
                  .toList());
      assertThat(length(astray, true))
          .as("seed " + seed)
          .isCloseTo(length(exact, true), within(0.05 * astray.walls().size()));
    }
  }

  @Test
  void labelsAndPointsAgreeWithJts() {
    for (long seed = 1; seed <= FLOORS; seed++) {
      Random random = new Random(seed);
      List<Polygon> rooms = rooms(random);
      FloorGeometry floor = sketch(rooms, random, 0).build().floors().getFirst();
      for (int i = 0; i < rooms.size(); i++) {
        Point centre = floor.findRoom("R" + i).orElseThrow().centre();
        assertThat(rooms.get(i).contains(point(centre))).as("seed " + seed).isTrue();
      }
      for (int i = 0; i < 50; i++) {
        Point place = new Point(random.nextDouble() * 22 - 1, random.nextDouble() * 16 - 1);
        List<String> expected = new ArrayList<>();
        for (int j = 0; j < rooms.size(); j++) {
          if (rooms.get(j).contains(point(place))) {
            expected.add("R" + j);
          }
        }
        assertThat(floor.findRoomAt(place).map(RoomGeometry::name).stream().toList())
            .as("seed " + seed + " at " + place)
            .isEqualTo(expected);
      }
    }
  }

  private static String sides(WallSegment wall) {
    return wall.room() + "|" + wall.beyond();
  }

  private static double length(FloorGeometry floor, boolean outer) {
    return floor.walls().stream()
        .filter(wall -> wall.isOuter() == outer)
        .mapToDouble(WallSegment::lengthMetres)
        .sum();
  }

  private static org.locationtech.jts.geom.Point point(Point place) {
    return JTS.createPoint(new Coordinate(place.xMetres(), place.yMetres()));
  }

  /** A floor of 20 m by 14 m cut at random decimetres; then some neighbours are joined. */
  private static List<Polygon> rooms(Random random) {
    List<Box> boxes = new ArrayList<>();
    cut(new Box(0, 0, 20, 14), random, boxes);
    List<Geometry> rooms = new ArrayList<>();
    for (Box box : boxes) {
      rooms.add(
          JTS.createPolygon(
              new Coordinate[] {
                new Coordinate(box.left(), box.bottom()),
                new Coordinate(box.right(), box.bottom()),
                new Coordinate(box.right(), box.top()),
                new Coordinate(box.left(), box.top()),
                new Coordinate(box.left(), box.bottom())
              }));
    }
    for (int tries = 0; tries < 3 && rooms.size() > 2; tries++) {
      int one = random.nextInt(rooms.size());
      int other = random.nextInt(rooms.size());
      if (one != other
          && rooms.get(one).union(rooms.get(other)) instanceof Polygon joined
          && joined.getNumInteriorRing() == 0) {
        rooms.remove(Math.max(one, other));
        rooms.remove(Math.min(one, other));
        rooms.add(joined);
      }
    }
    return rooms.stream().map(Polygon.class::cast).toList();
  }

  private static void cut(Box box, Random random, List<Box> boxes) {
    double width = box.right() - box.left();
    double height = box.top() - box.bottom();
    if (Math.max(width, height) < 3 || (Math.max(width, height) < 9 && random.nextInt(3) == 0)) {
      boxes.add(box);
      return;
    }
    double share = 0.3 + 0.4 * random.nextDouble();
    if (width >= height) {
      double x = Math.round((box.left() + width * share) * 10) / 10.0;
      cut(new Box(box.left(), box.bottom(), x, box.top()), random, boxes);
      cut(new Box(x, box.bottom(), box.right(), box.top()), random, boxes);
    } else {
      double y = Math.round((box.bottom() + height * share) * 10) / 10.0;
      cut(new Box(box.left(), box.bottom(), box.right(), y), random, boxes);
      cut(new Box(box.left(), y, box.right(), box.top()), random, boxes);
    }
  }

  /**
   * The rooms as a plan, each outline from a random corner and in a random direction, each corner
   * astray.
   */
  private static FloorSketch sketch(List<Polygon> rooms, Random random, double astray) {
    FloorSketch sketch = new FloorSketch();
    for (int i = 0; i < rooms.size(); i++) {
      Coordinate[] ring = rooms.get(i).getExteriorRing().getCoordinates();
      int count = ring.length - 1;
      int start = random.nextInt(count);
      int step = random.nextBoolean() ? 1 : -1;
      List<Point> outline = new ArrayList<>();
      for (int j = 0; j < count; j++) {
        Coordinate corner = ring[Math.floorMod(start + step * j, count)];
        outline.add(
            new Point(
                corner.x + (random.nextDouble() * 2 - 1) * astray,
                corner.y + (random.nextDouble() * 2 - 1) * astray));
      }
      sketch.room("R" + i, outline);
    }
    return sketch.floor("F");
  }
}
