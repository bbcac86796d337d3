package keenward.core.building;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.List;
import java.util.Random;
import keenward.core.plan.Backdrop;
import keenward.core.plan.Fact;
import keenward.core.plan.PicturePoint;
import keenward.core.plan.Point;
import keenward.core.quantities.Angle;
import keenward.core.quantities.Length;
import org.junit.jupiter.api.Test;

class BackdropPlaceTest {

  private static final PicturePoint FROM = new PicturePoint(100, 400);
  private static final PicturePoint TO = new PicturePoint(300, 400);

  private static Backdrop backdrop(
      PicturePoint from, PicturePoint to, Fact<Point> at, Fact<Angle> bearing) {
    return new Backdrop(
        "floor.png", 1, List.of(from, to), Fact.of(new Length(8, "8 m")), at, bearing);
  }

  private static void isAt(Point place, double xMetres, double yMetres) {
    assertThat(place.xMetres()).isCloseTo(xMetres, within(1e-9));
    assertThat(place.yMetres()).isCloseTo(yMetres, within(1e-9));
  }

  @Test
  void scalesByTheDistanceAndCountsUpwards() {
    BackdropPlace place =
        BackdropPlace.of(backdrop(FROM, TO, Fact.of(new Point(1, 2)), Fact.missing()))
            .orElseThrow();

    assertThat(place.metresPerUnit()).isCloseTo(0.04, within(1e-12));
    isAt(place.onFloor(FROM), 1, 2);
    isAt(place.onFloor(TO), 9, 2);
    isAt(place.onFloor(new PicturePoint(100, 300)), 1, 6);
  }

  @Test
  void turnsACrookedPictureByTheBearing() {
    PicturePoint lower = new PicturePoint(290, 460);
    BackdropPlace place =
        BackdropPlace.of(backdrop(FROM, lower, Fact.missing(), Fact.of(new Angle(90, "90 deg"))))
            .orElseThrow();

    isAt(place.onFloor(FROM), 0, 0);
    isAt(place.onFloor(lower), 8, 0);
    // A quarter turn to the left of that way, as long.
    isAt(place.onFloor(new PicturePoint(100 + 60, 400 - 190)), 0, 8);
  }

  @Test
  void isNotKnownWithoutPointsOrDistance() {
    Backdrop bare =
        new Backdrop("floor.png", 1, List.of(), Fact.missing(), Fact.missing(), Fact.missing());
    Backdrop unmeasured =
        new Backdrop(
            "floor.png", 1, List.of(FROM, TO), Fact.unknown(), Fact.missing(), Fact.missing());

    assertThat(BackdropPlace.of(bare)).isEmpty();
    assertThat(BackdropPlace.of(unmeasured)).isEmpty();
  }

  /** Against the affine transform of the Java platform (java.awt.geom), on seeded pictures. */
  @Test
  void agreesWithAnAffineTransform() {
    Random random = new Random(5);
    for (int i = 0; i < 200; i++) {
      PicturePoint from = new PicturePoint(random.nextInt(2000), random.nextInt(2000));
      PicturePoint to = new PicturePoint(2100 + random.nextInt(900), random.nextInt(2000));
      int bearing = random.nextInt(720) - 360;
      Point at = new Point(random.nextInt(40), random.nextInt(40));
      BackdropPlace place =
          BackdropPlace.of(
                  backdrop(from, to, Fact.of(at), Fact.of(new Angle(bearing, bearing + " deg"))))
              .orElseThrow();
      double scale = 8 / Math.hypot(to.right() - from.right(), to.down() - from.down());
      AffineTransform transform = new AffineTransform();
      transform.translate(at.xMetres(), at.yMetres());
      transform.rotate(
          Math.toRadians(90 - bearing)
              - Math.atan2(from.down() - to.down(), to.right() - from.right()));
      transform.scale(scale, -scale);
      transform.translate(-from.right(), -from.down());
      double right = random.nextInt(3000);
      double down = random.nextInt(3000);
      Point2D expected = transform.transform(new Point2D.Double(right, down), null);

      isAt(place.onFloor(new PicturePoint(right, down)), expected.getX(), expected.getY());
    }
  }
}
