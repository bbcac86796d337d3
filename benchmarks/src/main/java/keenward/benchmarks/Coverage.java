package keenward.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import keenward.core.building.plane.Barrier;
import keenward.core.building.plane.Barriers;
import keenward.core.building.plane.Sweep;
import keenward.core.plan.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.operation.union.CascadedPolygonUnion;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What 200 detectors (fans of 90 degrees, 12 m) see among 2,000 walls, and ten times as many of
 * both: the sweep, and the plain way with JTS, which takes from each fan the shadows of the walls
 * in it (STRtree, prepared geometry, cascaded union, OverlayNG).
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class Coverage {

  private static final double RANGE = 12;
  private static final double SPAN = Math.PI / 2;

  /** So many chords keep an arc of 12 m within 1 cm. */
  private static final int CHORDS = 20;

  private static final GeometryFactory JTS = new GeometryFactory();

  /** Detectors; there are ten times as many walls. */
  @Param({"200", "2000"})
  private int detectors;

  private final List<Barrier> walls = new ArrayList<>();
  private final List<Point> eyes = new ArrayList<>();
  private final List<Double> starts = new ArrayList<>();

  /** Rooms of 4 m x 4 m, eight walls of half a side each about one, with a gap for a door. */
  @Setup
  public void build() {
    Random random = new Random(20261127);
    walls.clear();
    eyes.clear();
    starts.clear();
    int rooms = detectors * 10 / 8;
    int side = (int) Math.ceil(Math.sqrt(rooms));
    for (int room = 0; room < rooms; room++) {
      double x = 4.2 * (room % side);
      int row = room / side;
      double y = 4.2 * row;
      double gap = 0.9;
      for (int i = 0; i < 4; i++) {
        double half = random.nextDouble() < 0.5 ? 2 : (4 - gap) / 2;
        addWall(x, y, i, 0, half);
        addWall(x, y, i, half + (half == 2 ? 0 : gap), 4);
      }
      if (eyes.size() < detectors) {
        eyes.add(
            new Point(x + 0.1 + 3.8 * random.nextDouble(), y + 0.1 + 3.8 * random.nextDouble()));
        starts.add(2 * Math.PI * random.nextDouble());
      }
    }
    checkThatBothAgree();
  }

  /** Chords lose at most one part in a thousand of a fan. */
  private void checkThatBothAgree() {
    if (detectors == 200 && Math.abs(plainJts() / sweep() - 1) > 2e-3) {
      throw new IllegalStateException("the two ways differ: " + plainJts() + ", " + sweep());
    }
  }

  private void addWall(double x, double y, int side, double from, double to) {
    walls.add(new Barrier(on(x, y, side, from), on(x, y, side, to)));
  }

  private static Point on(double x, double y, int side, double along) {
    return switch (side) {
      case 0 -> new Point(x + along, y);
      case 1 -> new Point(x + 4, y + along);
      case 2 -> new Point(x + 4 - along, y + 4);
      default -> new Point(x, y + 4 - along);
    };
  }

  /** The sweep. */
  @Benchmark
  public double sweep() {
    Barriers barriers = Barriers.of(walls);
    double area = 0;
    for (int i = 0; i < eyes.size(); i++) {
      area += Sweep.from(eyes.get(i), RANGE, starts.get(i), SPAN, barriers).squareMetres();
    }
    return area;
  }

  /** The plain way with JTS. */
  @Benchmark
  public double plainJts() {
    STRtree tree = new STRtree();
    for (Barrier wall : walls) {
      LineString line =
          JTS.createLineString(new Coordinate[] {coordinate(wall.from()), coordinate(wall.to())});
      tree.insert(line.getEnvelopeInternal(), line);
    }
    tree.build();
    double area = 0;
    for (int i = 0; i < eyes.size(); i++) {
      area += seen(tree, eyes.get(i), starts.get(i)).getArea();
    }
    return area;
  }

  private static Geometry seen(STRtree tree, Point eye, double start) {
    Geometry fan = fan(eye, start);
    PreparedGeometry prepared = PreparedGeometryFactory.prepare(fan);
    List<Geometry> shadows = new ArrayList<>();
    for (Object each : tree.query(fan.getEnvelopeInternal())) {
      LineString wall = (LineString) each;
      if (prepared.intersects(wall)) {
        shadows.add(shadow(eye, wall.getCoordinateN(0), wall.getCoordinateN(1)));
      }
    }
    return shadows.isEmpty()
        ? fan
        : OverlayNGRobust.overlay(fan, CascadedPolygonUnion.union(shadows), OverlayNG.DIFFERENCE);
  }

  private static Geometry fan(Point eye, double start) {
    Coordinate[] ring = new Coordinate[CHORDS + 3];
    ring[0] = coordinate(eye);
    for (int i = 0; i <= CHORDS; i++) {
      double direction = start + SPAN * i / CHORDS;
      ring[i + 1] =
          new Coordinate(
              eye.xMetres() + RANGE * Math.cos(direction),
              eye.yMetres() + RANGE * Math.sin(direction));
    }
    ring[CHORDS + 2] = ring[0];
    return JTS.createPolygon(ring);
  }

  /** The wall and what lies behind it, out beyond the range. */
  private static Geometry shadow(Point eye, Coordinate one, Coordinate other) {
    return JTS.createPolygon(
        new Coordinate[] {one, beyond(eye, one), beyond(eye, other), other, one});
  }

  private static Coordinate beyond(Point eye, Coordinate place) {
    double x = place.getX() - eye.xMetres();
    double y = place.getY() - eye.yMetres();
    double far = 40 * RANGE / Math.max(1e-3, Math.hypot(x, y));
    return new Coordinate(eye.xMetres() + x * far, eye.yMetres() + y * far);
  }

  private static Coordinate coordinate(Point point) {
    return new Coordinate(point.xMetres(), point.yMetres());
  }
}
