package keenward.core.building.coverage;

import java.util.ArrayList;
import java.util.List;
import keenward.core.plan.Point;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;

/** Areas as the JTS Topology Suite holds them: unions, differences, margins. */
final class Shapes {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private Shapes() {}

  static Geometry nothing() {
    return FACTORY.createPolygon();
  }

  /** The area inside an outline, which may touch itself (a room round an island). */
  static Geometry area(List<Point> outline) {
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

  static LineString line(Point from, Point to) {
    return FACTORY.createLineString(
        new Coordinate[] {
          new Coordinate(from.xMetres(), from.yMetres()), new Coordinate(to.xMetres(), to.yMetres())
        });
  }

  static Geometry union(List<Geometry> areas) {
    return areas.isEmpty() ? nothing() : OverlayNGRobust.union(areas);
  }

  static Geometry less(Geometry area, Geometry taken) {
    return combine(area, taken, OverlayNG.DIFFERENCE);
  }

  static Geometry both(Geometry one, Geometry other) {
    return combine(one, other, OverlayNG.INTERSECTION);
  }

  /** Areas only: lines and points, where edges touch, are left out. */
  private static Geometry combine(Geometry one, Geometry other, int how) {
    return FACTORY.createMultiPolygon(
        polygons(OverlayNGRobust.overlay(one, other, how)).toArray(new Polygon[0]));
  }

  static List<Polygon> polygons(Geometry any) {
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
  static List<List<Point>> rings(Geometry area) {
    List<List<Point>> rings = new ArrayList<>();
    for (Polygon polygon : polygons(area)) {
      rings.add(ring(polygon.getExteriorRing()));
      for (int i = 0; i < polygon.getNumInteriorRing(); i++) {
        rings.add(ring(polygon.getInteriorRingN(i)));
      }
    }
    return rings;
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
