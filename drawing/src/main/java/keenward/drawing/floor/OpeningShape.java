package keenward.drawing.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.building.OpeningPlace;
import keenward.core.plan.Hinge;
import keenward.core.plan.Opening;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.Swing;

/**
 * An opening in pixels.
 *
 * @param place the opening
 * @param left left jamb seen from its first room
 * @param right right jamb
 * @param inward one pixel into its first room
 * @param thickness of its wall
 * @param leaves leaves that swing; empty when the plan does not say which way
 */
record OpeningShape(
    OpeningPlace place, Spot left, Spot right, Spot inward, double thickness, List<Leaf> leaves) {

  /**
   * A leaf shown open at a right angle.
   *
   * @param hinge the jamb it hangs on
   * @param open where its free edge is when open
   * @param shut where its free edge is when shut
   */
  record Leaf(Spot hinge, Spot open, Spot shut) {

    double width() {
      return hinge.distance(shut);
    }

    /** Whether the free edge runs clockwise from open to shut, seen on the page. */
    boolean shutsClockwise() {
      return (open.x() - hinge.x()) * (shut.y() - hinge.y())
              - (open.y() - hinge.y()) * (shut.x() - hinge.x())
          > 0;
    }

    /** Points along the way of the free edge. */
    List<Spot> arc() {
      List<Spot> points = new ArrayList<>();
      for (int i = 0; i <= 6; i++) {
        double angle = Math.PI / 2 * i / 6;
        points.add(
            new Spot(
                hinge.x()
                    + (open.x() - hinge.x()) * Math.cos(angle)
                    + (shut.x() - hinge.x()) * Math.sin(angle),
                hinge.y()
                    + (open.y() - hinge.y()) * Math.cos(angle)
                    + (shut.y() - hinge.y()) * Math.sin(angle)));
      }
      return points;
    }
  }

  static OpeningShape of(OpeningPlace place, Frame frame) {
    Spot left = frame.at(place.leftJamb());
    Spot right = frame.at(place.rightJamb());
    Spot inward = frame.direction(place.inward());
    double thickness = WallLook.of(place.wall()).pixels(frame.scale());
    return new OpeningShape(
        place, left, right, inward, thickness, leaves(place.opening(), left, right, inward));
  }

  private static List<Leaf> leaves(Opening opening, Spot left, Spot right, Spot inward) {
    Optional<Swing> opens = opening.opens().find();
    if (opens.isEmpty()) {
      return List.of();
    }
    double side = opens.get() == Swing.IN ? 1 : -1;
    double width = left.distance(right);
    if (opening.kind() == OpeningKind.DOUBLE_DOOR) {
      Spot middle = new Spot((left.x() + right.x()) / 2, (left.y() + right.y()) / 2);
      return List.of(
          new Leaf(left, left.along(inward, side * width / 2), middle),
          new Leaf(right, right.along(inward, side * width / 2), middle));
    }
    Optional<Hinge> hinge = opening.hinge().find();
    boolean single = opening.kind() == OpeningKind.DOOR || opening.kind() == OpeningKind.GATE;
    if (!single || hinge.isEmpty()) {
      return List.of();
    }
    Spot hung = hinge.get() == Hinge.LEFT ? left : right;
    Spot free = hinge.get() == Hinge.LEFT ? right : left;
    return List.of(new Leaf(hung, hung.along(inward, side * width), free));
  }

  Spot middle() {
    return new Spot((left.x() + right.x()) / 2, (left.y() + right.y()) / 2);
  }

  /** One pixel from the left jamb towards the right one. */
  Spot alongWall() {
    double width = left.distance(right);
    return new Spot((right.x() - left.x()) / width, (right.y() - left.y()) / width);
  }
}
