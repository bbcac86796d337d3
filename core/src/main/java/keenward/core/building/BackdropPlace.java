package keenward.core.building;

import java.util.List;
import java.util.Optional;
import keenward.core.plan.Backdrop;
import keenward.core.plan.PicturePoint;
import keenward.core.plan.Point;
import keenward.core.quantities.Angle;
import keenward.core.quantities.Length;

/**
 * Where a picture lies under a floor: turned and scaled alike in every direction, so that two
 * places of it lie where they are in the building.
 *
 * @param origin the place of the picture that {@code at} tells
 * @param at where that place lies on the floor
 * @param metresPerUnit scale of the picture
 * @param turnRadians by how much the picture is turned to the left
 */
public record BackdropPlace(
    PicturePoint origin, Point at, double metresPerUnit, double turnRadians) {

  /** The place of a picture; empty while its scale is not known. */
  public static Optional<BackdropPlace> of(Backdrop backdrop) {
    List<PicturePoint> points = backdrop.points();
    Optional<Double> metres = backdrop.distance().map(Length::metres).find();
    if (points.size() != 2 || metres.isEmpty()) {
      return Optional.empty();
    }
    double right = points.get(1).right() - points.get(0).right();
    double up = points.get(0).down() - points.get(1).down();
    double drawn = Math.atan2(up, right);
    // A bearing turns to the right from north, the plane to the left from east.
    double wanted =
        backdrop
            .bearing()
            .map(Angle::degrees)
            .find()
            .map(each -> Math.toRadians(90 - each))
            .orElse(drawn);
    return Optional.of(
        new BackdropPlace(
            points.get(0),
            backdrop.at().orElse(new Point(0, 0)),
            metres.get() / Math.hypot(right, up),
            wanted - drawn));
  }

  /** Where a place of the picture lies on the floor. */
  public Point onFloor(PicturePoint place) {
    double right = (place.right() - origin.right()) * metresPerUnit;
    double up = (origin.down() - place.down()) * metresPerUnit;
    return new Point(
        at.xMetres() + right * Math.cos(turnRadians) - up * Math.sin(turnRadians),
        at.yMetres() + right * Math.sin(turnRadians) + up * Math.cos(turnRadians));
  }
}
