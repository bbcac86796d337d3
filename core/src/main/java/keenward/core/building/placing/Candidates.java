package keenward.core.building.placing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.building.FloorGeometry;
import keenward.core.building.RoomGeometry;
import keenward.core.building.coverage.DetectorViews;
import keenward.core.building.coverage.FloorBarriers;
import keenward.core.building.coverage.Glare;
import keenward.core.building.placing.Candidate.Mount;
import keenward.core.building.plane.Barriers;
import keenward.core.building.plane.Polygons;
import keenward.core.building.plane.SeenArea;
import keenward.core.building.plane.Sweep;
import keenward.core.plan.Coverage;
import keenward.core.plan.CoveragePattern;
import keenward.core.plan.DeviceType;
import keenward.core.plan.Opening;
import keenward.core.plan.Point;
import keenward.core.quantities.Angle;
import keenward.core.quantities.Length;

/**
 * Places at which a detector could go on one floor: corners, walls every 1.5 m, and for what looks
 * all round the ceiling every metre; in a corner it looks along the middle of the corner or 15
 * degrees beside it, on a wall straight out or 40 degrees to either side.
 */
final class Candidates {

  /** At which detectors are proposed: 2.1 to 2.4 m are common practice, no source. */
  static final Length HEIGHT = new Length(2.2, "2.2 m");

  private static final double WALL_STEP_METRES = 1.5;
  private static final double CEILING_STEP_METRES = 1;

  /** In a room so large that this is passed, steps grow. */
  private static final double MOST_STEPS = 100;

  /** Corners that turn less are walls. */
  private static final double LEAST_CORNER_RADIANS = Math.toRadians(20);

  private static final double FROM_WALL_METRES = 0.8;
  private static final double[] IN_CORNER = {0, Math.toRadians(15), -Math.toRadians(15)};
  private static final double[] ON_WALL = {0, Math.toRadians(40), -Math.toRadians(40)};

  private final FloorGeometry floor;
  private final List<DeviceType> types;
  private final Barriers barriers;
  private final List<Candidate> found = new ArrayList<>();

  private Candidates(FloorGeometry floor, List<DeviceType> types) {
    this.floor = floor;
    this.types = types;
    barriers = FloorBarriers.of(floor);
  }

  /** The places of a room for each of these types, in a fixed order. */
  static List<Candidate> in(FloorGeometry floor, List<RoomGeometry> rooms, List<DeviceType> types) {
    Candidates candidates = new Candidates(floor, types);
    for (RoomGeometry room : rooms) {
      for (DeviceType type : types) {
        candidates.add(room, type);
      }
    }
    return candidates.found;
  }

  private void add(RoomGeometry room, DeviceType type) {
    Coverage coverage = type.traits().coverage().find().orElseThrow();
    double range = coverage.rangeMetres().orElse(0.0);
    if (coverage.shape() == CoveragePattern.CEILING) {
      onCeiling(room, type, range);
      return;
    }
    double span = Math.toRadians(coverage.angle().map(Angle::degrees).orElse(0.0));
    List<Point> outline = room.outline();
    boolean toTheLeft = Polygons.signedArea(outline) > 0;
    for (int i = 0; i < outline.size(); i++) {
      Point before = outline.get((i + outline.size() - 1) % outline.size());
      Point corner = outline.get(i);
      Point after = outline.get((i + 1) % outline.size());
      double turn =
          Math.IEEEremainder(
              direction(corner, after) - direction(before, corner), SeenArea.FULL_TURN);
      boolean isCorner = (toTheLeft ? turn : -turn) > LEAST_CORNER_RADIANS;
      if (isCorner) {
        double middle = middleOfCorner(before, corner, after);
        for (double off : IN_CORNER) {
          at(
              room,
              type,
              step(corner, middle, Spots.CLEAR_METRES * 1.5),
              middle + off,
              span,
              range,
              Mount.CORNER);
        }
      }
      alongWall(room, type, corner, after, toTheLeft, span, range);
    }
  }

  /** The direction that halves an inner corner. */
  private static double middleOfCorner(Point before, Point corner, Point after) {
    double one = direction(corner, before);
    double other = direction(corner, after);
    return Math.atan2(Math.sin(one) + Math.sin(other), Math.cos(one) + Math.cos(other));
  }

  private void alongWall(
      RoomGeometry room,
      DeviceType type,
      Point from,
      Point to,
      boolean toTheLeft,
      double span,
      double range) {
    double step = Math.max(WALL_STEP_METRES, Polygons.perimeter(room.outline()) / MOST_STEPS);
    double inward = direction(from, to) + (toTheLeft ? Math.PI / 2 : -Math.PI / 2);
    for (Point on : Spots.along(from, to, step)) {
      if (Spots.isInOpening(floor, on)) {
        continue;
      }
      for (double off : ON_WALL) {
        at(room, type, step(on, inward, Spots.CLEAR_METRES), inward + off, span, range, Mount.WALL);
      }
    }
  }

  private void onCeiling(RoomGeometry room, DeviceType type, double range) {
    addRound(room, type, room.centre(), range);
    Spots.Box box = Spots.Box.of(room.outline());
    double step = Math.max(CEILING_STEP_METRES, Math.sqrt(box.squareMetres() / MOST_STEPS) / 2);
    for (Point place : box.grid(FROM_WALL_METRES, step)) {
      if (room.contains(place) && room.distanceToWallsMetres(place) >= FROM_WALL_METRES - 1e-9) {
        addRound(room, type, place, range);
      }
    }
  }

  private void addRound(RoomGeometry room, DeviceType type, Point place, double range) {
    found.add(
        new Candidate(
            type,
            types.indexOf(type),
            floor.name(),
            room.name(),
            place,
            Optional.empty(),
            Mount.CEILING,
            Sweep.from(place, range, -Math.PI, SeenArea.FULL_TURN, barriers),
            Optional.empty()));
  }

  private void at(
      RoomGeometry room,
      DeviceType type,
      Point place,
      double looking,
      double span,
      double range,
      Mount mount) {
    if (!room.contains(place) || Spots.isInFurniture(floor, place)) {
      return;
    }
    // Whole degrees and centimetres, as they would be written in the plan.
    double bearing = Math.round(90 - Math.toDegrees(looking));
    double turned = ((bearing % 360) + 360) % 360;
    double direction = Math.toRadians(90 - turned);
    Point rounded = Spots.inCentimetres(place);
    if (!room.contains(rounded)) {
      return;
    }
    double blind =
        type.traits()
            .coverage()
            .find()
            .flatMap(coverage -> coverage.looksDown().map(Angle::degrees).find())
            .map(degrees -> DetectorViews.blindMetres(HEIGHT.metres(), degrees))
            .orElse(0.0);
    SeenArea seen = Sweep.from(rounded, range, direction - span / 2, span, barriers).beyond(blind);
    found.add(
        new Candidate(
            type,
            types.indexOf(type),
            floor.name(),
            room.name(),
            rounded,
            Optional.of(turned),
            mount,
            seen,
            Glare.find(floor, barriers, rounded, direction, range).map(Opening::name)));
  }

  private static double direction(Point from, Point to) {
    return Math.atan2(to.yMetres() - from.yMetres(), to.xMetres() - from.xMetres());
  }

  private static Point step(Point from, double direction, double metres) {
    return new Point(
        from.xMetres() + metres * Math.cos(direction),
        from.yMetres() + metres * Math.sin(direction));
  }
}
