package keenward.core.building.placing;

import java.util.ArrayList;
import java.util.List;
import keenward.core.building.FloorGeometry;
import keenward.core.building.plane.Polygons;
import keenward.core.plan.Furniture;
import keenward.core.plan.Point;

/** Places that are tried: along walls and in a grid, and what rules one out. */
final class Spots {

  /** A device hangs so far from a wall and from the edge of an opening. */
  static final double CLEAR_METRES = 0.1;

  private Spots() {}

  /** Places evenly along a wall, at least a step apart, none at its ends. */
  static List<Point> along(Point from, Point to, double stepMetres) {
    int places = (int) Math.floor(from.distanceMetres(to) / stepMetres);
    List<Point> spots = new ArrayList<>();
    for (int i = 1; i <= places; i++) {
      spots.add(Polygons.along(from, to, i / (places + 1.0)));
    }
    return spots;
  }

  static boolean isInOpening(FloorGeometry floor, Point place) {
    return floor.openings().stream()
        .anyMatch(opening ->
            Polygons.distance(opening.leftJamb(), opening.rightJamb(), place) < CLEAR_METRES);
  }

  static boolean isInFurniture(FloorGeometry floor, Point place) {
    return floor.floor().furniture().stream()
        .map(Furniture::outline)
        .anyMatch(outline -> Polygons.contains(outline, place));
  }

  /** As it would be written in the plan. */
  static Point inCentimetres(Point place) {
    return new Point(
        Math.round(place.xMetres() * 100) / 100.0, Math.round(place.yMetres() * 100) / 100.0);
  }

  /** The upright rectangle round an outline. */
  record Box(double west, double east, double south, double north) {

    static Box of(List<Point> outline) {
      return new Box(
          outline.stream().mapToDouble(Point::xMetres).min().orElse(0),
          outline.stream().mapToDouble(Point::xMetres).max().orElse(0),
          outline.stream().mapToDouble(Point::yMetres).min().orElse(0),
          outline.stream().mapToDouble(Point::yMetres).max().orElse(0));
    }

    double squareMetres() {
      return (east - west) * (north - south);
    }

    /** Places a step apart, the first of them off the south-west corner. */
    List<Point> grid(double offMetres, double stepMetres) {
      List<Point> spots = new ArrayList<>();
      for (double x = west + offMetres; x < east; x += stepMetres) {
        for (double y = south + offMetres; y < north; y += stepMetres) {
          spots.add(new Point(x, y));
        }
      }
      return spots;
    }
  }
}
