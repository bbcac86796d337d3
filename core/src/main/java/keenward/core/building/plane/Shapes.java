package keenward.core.building.plane;

import java.util.ArrayList;
import java.util.List;
import keenward.core.plan.Point;
import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Areas as the JTS Topology Suite holds them: unions, differences, margins. */
public final class Shapes {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  /** A margin goes round a corner in so many straight pieces for each quarter turn. */
  private static final int CHORDS_A_QUARTER = 2;

  private Shapes() {}

  public static Geometry nothing() {
    return FACTORY.createPolygon();
  }

  /** The area inside an outline, which may touch itself (a room round an island). */
  public static Geometry area(List<Point> outline) {
    if (outline.size() < 3) {
      return nothing();
    }
    Coordinate[] ring = new Coordinate[outline.size() + 1];
    for (int i = 0; i < ring.length; i++) {
      Point point = outline.get(i % outline.size());
      ring[i] = new Coordinate(point.xMetres(), point.yMetres());
    }
    Polygon polygon = FACTORY.createPolygon(ring);
    return polygon.isValid() ? polygon : polygon.buffer(0);
  }

  public static LineString line(Point from, Point to) {
    return FACTORY.createLineString(
        new Coordinate[] {
          new Coordinate(from.xMetres(), from.yMetres()), new Coordinate(to.xMetres(), to.yMetres())
        });
  }

  public static Geometry union(List<Geometry> areas) {
    return areas.isEmpty() ? nothing() : OverlayNGRobust.union(areas);
  }

  public static Geometry less(Geometry area, Geometry taken) {
    return combine(area, taken, OverlayNG.DIFFERENCE);
  }

  public static Geometry both(Geometry one, Geometry other) {
    return combine(one, other, OverlayNG.INTERSECTION);
  }

  /** Areas only: lines and points, where edges touch, are left out. */
  private static Geometry combine(Geometry one, Geometry other, int how) {
    return FACTORY.createMultiPolygon(
        polygons(OverlayNGRobust.overlay(one, other, how)).toArray(new Polygon[0]));
  }

  public static List<Polygon> polygons(Geometry any) {
    List<Polygon> polygons = new ArrayList<>();
    for (int i = 0; i < any.getNumGeometries(); i++) {
      Geometry each = any.getGeometryN(i);
      if (each instanceof Polygon polygon) {
        if (!polygon.isEmpty()) {
          polygons.add(polygon);
        }
      } else if (each.getNumGeometries() > 1) {
        polygons.addAll(polygons(each));
      }
    }
    return polygons;
  }

  /** The rings of an area, each not closed: the outer one of every piece, then its holes. */
  public static List<List<Point>> rings(Geometry area) {
    List<List<Point>> rings = new ArrayList<>();
    for (Polygon polygon : polygons(area)) {
      rings.add(ring(polygon.getExteriorRing()));
      for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
        rings.add(ring(polygon.getInteriorRingN(i)));
      }
    }
    return rings;
  }

  /**
   * What remains of rooms for the middle of a round body.
   *
   * @param rooms outlines of the rooms
   * @param walls pieces of wall
   * @param solids outlines of things in the way
   * @param radiusMetres half the width of the body
   * @return rings, not closed, each with the free area to its left; round a corner the edge is made
   *     of chords, which lie at most 8 % of the radius too near to it
   */
  public static List<List<Point>> freeOf(
      List<List<Point>> rooms, List<Barrier> walls, List<List<Point>> solids, double radiusMetres) {
    List<Geometry> inTheWay = new ArrayList<>();
    walls.forEach(wall -> inTheWay.add(line(wall.from(), wall.to())));
    solids.forEach(solid -> inTheWay.add(area(solid)));
    Geometry taken =
        FACTORY
            .createGeometryCollection(inTheWay.toArray(new Geometry[0]))
            .buffer(radiusMetres, CHORDS_A_QUARTER);
    List<List<Point>> rings = new ArrayList<>();
    for (Polygon polygon :
        polygons(less(union(rooms.stream().map(Shapes::area).toList()), taken))) {
      rings.add(turned(polygon.getExteriorRing(), true));
      for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
        rings.add(turned(polygon.getInteriorRingN(i), false));
      }
    }
    return rings;
  }

  private static List<Point> turned(LinearRing ring, boolean toTheLeft) {
    List<Point> points = ring(ring);
    return Orientation.isCCW(ring.getCoordinateSequence()) == toTheLeft
        ? points
        : points.reversed();
  }

  private static List<Point> ring(LinearRing ring) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i + 1 < ring.getNumPoints(); i++) {
      Coordinate corner = ring.getCoordinateN(i);
      points.add(new Point(corner.getX(), corner.getY()));
    }
    return points;
  }
}
