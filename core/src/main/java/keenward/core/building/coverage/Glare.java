package keenward.core.building.coverage;

import java.util.Optional;
import keenward.core.building.FloorGeometry;
import keenward.core.building.OpeningPlace;
import keenward.core.building.plane.Barriers;
import keenward.core.building.plane.Polygons;
import keenward.core.building.plane.SeenArea;
import keenward.core.building.plane.Sweep;
import keenward.core.plan.Material;
import keenward.core.plan.Opening;
import keenward.core.plan.Point;

/** Panes to outside at which a detector looks straight: sun and headlights come in by them. */
public final class Glare {

  /** So near to the middle of its angle. Common practice, no source. */
  private static final double STRAIGHT_RADIANS = Math.toRadians(20);

  private Glare() {}

  /**
   * The first such pane of a floor.
   *
   * @param eye where the detector is
   * @param directionRadians the middle of its angle, to the left from the x axis
   * @param rangeMetres its range
   */
  public static Optional<Opening> find(
      FloorGeometry floor,
      Barriers barriers,
      Point eye,
      double directionRadians,
      double rangeMetres) {
    return floor.openings().stream()
        .filter(place -> isPane(place.opening()))
        .filter(place -> eye.distanceMetres(place.middle()) <= rangeMetres)
        .filter(place -> isStraightAhead(eye, directionRadians, place.middle()))
        .filter(place -> isClear(barriers, eye, place))
        .map(OpeningPlace::opening)
        .findFirst();
  }

  private static boolean isPane(Opening opening) {
    return opening.isOutside()
        && switch (opening.kind()) {
          case WINDOW, FIXED_WINDOW, ROOF_WINDOW -> true;
          default -> opening.material().orNull() == Material.GLASS;
        };
  }

  private static boolean isStraightAhead(Point eye, double direction, Point pane) {
    double towards = Math.atan2(pane.yMetres() - eye.yMetres(), pane.xMetres() - eye.xMetres());
    return Math.abs(Math.IEEEremainder(towards - direction, SeenArea.FULL_TURN)) < STRAIGHT_RADIANS;
  }

  /** Whether nothing stands in nearly all of the way. */
  private static boolean isClear(Barriers barriers, Point eye, OpeningPlace pane) {
    return Sweep.from(
            eye, eye.distanceMetres(pane.middle()), -Math.PI, SeenArea.FULL_TURN, barriers)
        .sees(Polygons.along(eye, pane.middle(), 0.98));
  }
}
