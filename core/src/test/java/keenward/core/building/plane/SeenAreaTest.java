package keenward.core.building.plane;

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

/** What is seen less what is too near. */
class SeenAreaTest {

  private static final Point EYE = new Point(0, 0);
  private static final double ERROR_METRES = 0.001;

  private static SeenArea random(Random random) {
    List<Barrier> barriers = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      Point from = new Point(random.nextDouble() * 12 - 6, random.nextDouble() * 12 - 6);
      Point to =
          new Point(
              from.xMetres() + random.nextDouble() * 4 - 2,
              from.yMetres() + random.nextDouble() * 4 - 2);
      barriers.add(new Barrier(from, to));
    }
    return Sweep.from(
        EYE, 5, random.nextDouble() * 6, 0.5 + random.nextDouble() * 5, Barriers.of(barriers));
  }

  private static double areaOf(SeenArea seen) {
    return seen.outlines(ERROR_METRES).stream()
        .mapToDouble(outline -> Shapes.area(outline).getArea())
        .sum();
  }

  private static Geometry disc(double metres) {
    return new GeometryFactory().createPoint(new Coordinate(0, 0)).buffer(metres, 200);
  }

  /** Against JTS 1.20.0: the outline without the disc, less the disc. */
  @Test
  void areasAndOutlinesAgreeWithAnAreaLessADisc() {
    Random random = new Random(17);
    for (int i = 0; i < 300; i++) {
      SeenArea whole = random(random);
      double blind = 0.2 + random.nextDouble() * 3;
      SeenArea seen = whole.beyond(blind);
      double expected =
          Shapes.less(Shapes.area(whole.outlines(ERROR_METRES).getFirst()), disc(blind)).getArea();

      assertThat(seen.squareMetres()).as("area %d", i).isCloseTo(expected, within(0.03));
      assertThat(areaOf(seen)).as("outlines %d", i).isCloseTo(expected, within(0.03));
    }
  }

  @Test
  void seesExactlyWhatItsOutlinesHold() {
    Random random = new Random(18);
    int inside = 0;
    for (int i = 0; i < 60; i++) {
      SeenArea seen = random(random).beyond(1.2);
      List<List<Point>> outlines = seen.outlines(1e-6);
      for (int j = 0; j < 40; j++) {
        Point place = new Point(random.nextDouble() * 10 - 5, random.nextDouble() * 10 - 5);
        boolean isOnEdge =
            outlines.stream().anyMatch(ring -> Polygons.distanceToOutline(ring, place) < 1e-4);
        if (!isOnEdge) {
          boolean isHeld = outlines.stream().anyMatch(ring -> Polygons.contains(ring, place));
          assertThat(seen.sees(place)).isEqualTo(isHeld);
          inside += isHeld ? 1 : 0;
        }
      }
    }
    assertThat(inside).isGreaterThan(100);
  }

  @Test
  void aWallNearerThanTheBlindZoneSplitsWhatIsSeen() {
    Barriers post = Barriers.of(List.of(new Barrier(new Point(0.5, -0.1), new Point(0.5, 0.1))));
    SeenArea seen = Sweep.from(EYE, 5, -Math.PI / 4, Math.PI / 2, post).beyond(1);

    assertThat(seen.outlines(0.01)).hasSize(2);
    assertThat(seen.sees(new Point(3, 0))).isFalse();
    assertThat(seen.sees(new Point(3, 1.5))).isTrue();
    assertThat(seen.sees(new Point(0.5, 0.3))).isFalse();
    // A quarter of the ring from 1 to 5 m, less the post's shadow of 2 atan(0.1 / 0.5).
    double expected = (Math.PI / 2 - 2 * Math.atan(0.2)) / 2 * (25 - 1);
    assertThat(seen.squareMetres()).isCloseTo(expected, within(1e-9));
  }

  @Test
  void whatIsBlindToItsRangeSeesNothing() {
    SeenArea seen =
        Sweep.from(EYE, 5, 0, 1, Barriers.of(List.of())).beyond(Double.POSITIVE_INFINITY);

    assertThat(seen.outlines(0.01)).isEmpty();
    assertThat(seen.squareMetres()).isZero();
    assertThat(seen.sees(new Point(3, 1))).isFalse();
  }
}
