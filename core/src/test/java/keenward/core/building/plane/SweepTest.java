package keenward.core.building.plane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import keenward.core.plan.Point;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

class SweepTest {

  private static final GeometryFactory JTS = new GeometryFactory();

  @Test
  void seesAWholeDiscWhereNothingStandsInTheWay() {
    SeenArea seen = Sweep.from(new Point(3, 4), 10, 0, SeenArea.FULL_TURN, Barriers.of(List.of()));
    assertThat(seen.squareMetres()).isCloseTo(Math.PI * 100, within(1e-9));
    assertThat(seen.sees(new Point(12.9, 4))).isTrue();
    assertThat(seen.sees(new Point(13.1, 4))).isFalse();
  }

  @Test
  void seesASectorOfItsAngle() {
    SeenArea seen =
        Sweep.from(
            new Point(0, 0), 12, Math.toRadians(-45), Math.toRadians(90), Barriers.of(List.of()));
    assertThat(seen.squareMetres()).isCloseTo(Math.PI * 144 / 4, within(1e-9));
    assertThat(seen.sees(new Point(5, 4.9))).isTrue();
    assertThat(seen.sees(new Point(5, 5.1))).isFalse();
    assertThat(seen.sees(new Point(-1, 0))).isFalse();
  }

  @Test
  void fillsARoomWithoutCornersToHideIn() {
    Barriers room = Barriers.of(outline(0, 0, 6, 0, 6, 4, 0, 4));
    SeenArea corner = Sweep.from(new Point(0.02, 0.02), 20, 0, SeenArea.FULL_TURN, room);
    assertThat(corner.squareMetres()).isCloseTo(24, within(1e-9));
    SeenArea short3 = Sweep.from(new Point(3, 2), 3, 0, SeenArea.FULL_TURN, room);
    // A disc of radius 3 less two caps beyond each long wall, 2 m away: r^2 acos(d/r) - d sqrt(r^2
    // - d^2).
    double cap = 9 * Math.acos(2 / 3.0) - 2 * Math.sqrt(5);
    assertThat(short3.squareMetres()).isCloseTo(Math.PI * 9 - 2 * cap, within(1e-9));
  }

  @Test
  void doesNotSeeRoundTheCornerOfAConcaveRoom() {
    // An L: the eye in the lower arm; the line past the inner corner (3, 3) hits the far wall at y
    // = 6.
    Barriers room = Barriers.of(outline(0, 0, 6, 0, 6, 3, 3, 3, 3, 6, 0, 6));
    SeenArea seen = Sweep.from(new Point(6 - 1e-3, 1), 20, 0, SeenArea.FULL_TURN, room);
    assertThat(seen.sees(new Point(1, 4.2))).isTrue();
    assertThat(seen.sees(new Point(2.9, 5.9))).isFalse();
    assertThat(seen.squareMetres()).isLessThan(27);
  }

  @Test
  void seesPastAnIslandOnBothSides() {
    List<Barrier> barriers = outline(0, 0, 10, 0, 10, 10, 0, 10);
    barriers.addAll(outline(4, 4, 6, 4, 6, 6, 4, 6));
    SeenArea seen = Sweep.from(new Point(5, 1), 20, 0, SeenArea.FULL_TURN, Barriers.of(barriers));
    assertThat(seen.sees(new Point(1, 9))).isTrue();
    assertThat(seen.sees(new Point(9, 9))).isTrue();
    assertThat(seen.sees(new Point(5, 9))).isFalse();
    // Behind the near face from (4, 4) to (6, 4) the shadow widens from 2 m to 6 m at the far wall.
    assertThat(seen.squareMetres()).isCloseTo(100 - (2 + 6) / 2.0 * 6, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void agreesWithRaysCastOneByOneAndWithShadowsCutOffByJts(long seed) {
    Random random = new Random(seed);
    List<Barrier> barriers = new ArrayList<>();
    int count = 1 + random.nextInt(60);
    for (int i = 0; i < count; i++) {
      Point from = new Point(random.nextDouble() * 20, random.nextDouble() * 20);
      barriers.add(
          new Barrier(
              from,
              new Point(
                  from.xMetres() + random.nextGaussian() * 3,
                  from.yMetres() + random.nextGaussian() * 3)));
    }
    Point eye = new Point(10, 10);
    double range = 2 + random.nextDouble() * 10;
    double start = random.nextDouble() * 7 - 3.5;
    double span = seed % 3 == 0 ? SeenArea.FULL_TURN : 0.2 + random.nextDouble() * 5;
    SeenArea seen = Sweep.from(eye, range, start, span, Barriers.of(barriers));

    for (int i = 0; i < 2000; i++) {
      double turned = random.nextDouble() * SeenArea.FULL_TURN;
      double expected = turned <= span ? cast(eye, start + turned, range, barriers) : 0;
      assertThat(seen.reachMetres(start + turned))
          .as("seed %d, direction %f", seed, start + turned)
          .isCloseTo(expected, within(1e-6));
    }

    // The same area from the other side: a fan of chords less the shadow behind every barrier.
    double error = 1e-6;
    Geometry left = polygon(fan(eye, range, start, span));
    for (Barrier barrier : barriers) {
      for (Geometry shadow : shadows(eye, barrier)) {
        // buffer(0) drops the lines that a difference may leave where edges touch.
        left = OverlayNGRobust.overlay(left, shadow, OverlayNG.DIFFERENCE).buffer(0);
      }
    }
    assertThat(seen.squareMetres()).as("seed " + seed).isCloseTo(left.getArea(), within(0.01));
    assertThat(polygon(seen.outlines(error).getFirst()).getArea())
        .isCloseTo(seen.squareMetres(), within(span * range * error));
  }

  private static double cast(Point eye, double direction, double range, List<Barrier> barriers) {
    double least = range;
    double x = Math.cos(direction);
    double y = Math.sin(direction);
    for (Barrier barrier : barriers) {
      double ax = barrier.from().xMetres() - eye.xMetres();
      double ay = barrier.from().yMetres() - eye.yMetres();
      double dx = barrier.to().xMetres() - barrier.from().xMetres();
      double dy = barrier.to().yMetres() - barrier.from().yMetres();
      double det = x * dy - y * dx;
      double along = (ax * dy - ay * dx) / det;
      double part = (ax * y - ay * x) / det;
      if (along > 0 && part >= 0 && part <= 1) {
        least = Math.min(least, along);
      }
    }
    return least;
  }

  private static List<Point> fan(Point eye, double range, double start, double span) {
    List<Point> points = new ArrayList<>();
    if (span < SeenArea.FULL_TURN) {
      points.add(eye);
    }
    int chords = 4000;
    for (int i = 0; i <= chords; i++) {
      double direction = start + span * i / chords;
      if (i < chords || span < SeenArea.FULL_TURN) {
        points.add(
            new Point(
                eye.xMetres() + range * Math.cos(direction),
                eye.yMetres() + range * Math.sin(direction)));
      }
    }
    return points;
  }

  /** What lies behind a barrier, cut in two halves so that each is less than half a turn. */
  private static List<Geometry> shadows(Point eye, Barrier barrier) {
    Point middle =
        new Point(
            (barrier.from().xMetres() + barrier.to().xMetres()) / 2,
            (barrier.from().yMetres() + barrier.to().yMetres()) / 2);
    return List.of(
        polygon(List.of(barrier.from(), middle, far(eye, middle), far(eye, barrier.from()))),
        polygon(List.of(middle, barrier.to(), far(eye, barrier.to()), far(eye, middle))));
  }

  private static Point far(Point eye, Point through) {
    double times = 1000 / Math.max(1e-3, eye.distanceMetres(through));
    return new Point(
        eye.xMetres() + (through.xMetres() - eye.xMetres()) * times,
        eye.yMetres() + (through.yMetres() - eye.yMetres()) * times);
  }

  private static Geometry polygon(List<Point> points) {
    Coordinate[] ring = new Coordinate[points.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      Point point = points.get(i % points.size());
      ring[i] = new Coordinate(point.xMetres(), point.yMetres());
    }
    Geometry polygon = JTS.createPolygon(ring);
    return polygon.isValid() ? polygon : polygon.buffer(0);
  }

  static List<Barrier> outline(double... coordinates) {
    List<Barrier> barriers = new ArrayList<>();
    for (int i = 0; i < coordinates.length; i += 2) {
      int next = (i + 2) % coordinates.length;
      barriers.add(
          new Barrier(
              new Point(coordinates[i], coordinates[i + 1]),
              new Point(coordinates[next], coordinates[next + 1])));
    }
    return barriers;
  }
}
