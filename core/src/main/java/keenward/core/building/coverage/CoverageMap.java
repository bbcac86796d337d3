package keenward.core.building.coverage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import keenward.core.building.Building;
import keenward.core.building.DevicePlace;
import keenward.core.building.FloorGeometry;
import keenward.core.building.Passage;
import keenward.core.building.RoomGeometry;
import keenward.core.plan.Coverage;
import keenward.core.plan.CoveragePattern;
import keenward.core.plan.Device;
import keenward.core.plan.Furniture;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Point;
import keenward.core.plan.SitePlan;
import keenward.core.plan.ZoneDevice;
import keenward.core.quantities.Angle;
import keenward.core.quantities.Length;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * What the motion detectors of a plan see of its drawn floors. Only detectors that a zone watches
 * count.
 *
 * @param views what each detector sees, in the order of the plan
 * @param floors how much of each drawn floor is watched
 * @param notAssessed what could not be told
 */
public record CoverageMap(
    List<DetectorView> views, List<FloorCoverage> floors, List<MissingFact> notAssessed) {

  /** The most by which a chord may lie inside the arc that it stands for. */
  public static final double ARC_ERROR_METRES = 0.01;

  /** A person is taken to need a way so wide. Common practice, no source. */
  public static final double BODY_METRES = 0.5;

  /** An opening is reached from a gap whose middle line comes this close. */
  private static final double REACH_METRES = BODY_METRES / 2 + 0.05;

  /** Smaller gaps than the floor under a person are rounding of corners. */
  private static final double LEAST_GAP_SQUARE_METRES = BODY_METRES * BODY_METRES;

  public CoverageMap {
    views = List.copyOf(views);
    floors = List.copyOf(floors);
    notAssessed = List.copyOf(notAssessed);
  }

  /** What the detectors of a plan see of the building made of it. */
  public static CoverageMap of(SitePlan plan, Building building) {
    return new Maker(plan, building).make();
  }

  /** What a detector sees; empty when it is no motion detector, or could not be told. */
  public Optional<DetectorView> findView(String device) {
    return views.stream().filter(view -> view.device().name().equals(device)).findFirst();
  }

  /** The floor with this name. */
  public Optional<FloorCoverage> findFloor(String name) {
    return floors.stream().filter(floor -> floor.floor().equals(name)).findFirst();
  }

  private static final class Maker {
    private final SitePlan plan;
    private final Building building;
    private final List<DetectorView> views = new ArrayList<>();
    private final List<MissingFact> notAssessed = new ArrayList<>();
    private final Map<String, Barriers> barriers = new LinkedHashMap<>();

    Maker(SitePlan plan, Building building) {
      this.plan = plan;
      this.building = building;
    }

    CoverageMap make() {
      Set<String> watched = new LinkedHashSet<>();
      plan.zones().stream()
          .flatMap(zone -> zone.devices().stream())
          .filter(ZoneDevice.Fitted.class::isInstance)
          .map(each -> ((ZoneDevice.Fitted) each).device().name())
          .forEach(watched::add);
      plan.devices().stream()
          .filter(device -> watched.contains(device.name()) && seesPeople(device))
          .forEach(this::view);
      List<FloorCoverage> floors = new ArrayList<>();
      for (FloorGeometry floor : building.floors()) {
        if (!floor.rooms().isEmpty()) {
          floors.add(cover(floor));
        }
      }
      return new CoverageMap(views, floors, notAssessed);
    }

    private static boolean seesPeople(Device device) {
      return switch (device.kind()) {
        case MOTION, DUAL_MOTION, CURTAIN -> true;
        default -> false;
      };
    }

    private void view(Device device) {
      Optional<DevicePlace> place = building.findDevice(device.name());
      Optional<FloorGeometry> floor = place.flatMap(where -> building.findFloor(where.floor()));
      Optional<RoomGeometry> room =
          floor.flatMap(on -> place.flatMap(DevicePlace::room).flatMap(on::findRoom));
      if (room.isEmpty()) {
        miss(device, "room: Hall");
        return;
      }
      Optional<Point> eye = place.flatMap(DevicePlace::at).flatMap(at -> Eye.in(room.get(), at));
      if (eye.isEmpty()) {
        miss(device, "at: [0.1, 0.1]");
        return;
      }
      Optional<Coverage> coverage = device.traits().coverage().find();
      Optional<Double> range = coverage.flatMap(each -> each.range().map(Length::metres).find());
      if (coverage.isEmpty() || range.isEmpty()) {
        miss(device, "coverage: { pattern: fan, range: 12 m, angle: 90 deg }");
        return;
      }
      double start = -Math.PI;
      double span = SeenArea.FULL_TURN;
      if (coverage.get().pattern().orElse(CoveragePattern.FAN) != CoveragePattern.CEILING) {
        Optional<Double> angle = coverage.get().angle().map(Angle::degrees).find();
        Optional<Double> bearing = device.bearing().map(Angle::degrees).find();
        if (angle.isEmpty()) {
          miss(device, "coverage: { pattern: fan, range: 12 m, angle: 90 deg }");
          return;
        }
        if (bearing.isEmpty()) {
          miss(device, "bearing: 135 deg");
          return;
        }
        // A bearing turns to the right from north, the sweep to the left from east.
        span = Math.toRadians(angle.get());
        start = Math.toRadians(90 - bearing.get()) - span / 2;
      }
      Barriers around =
          barriers.computeIfAbsent(floor.get().name(), ignored -> FloorBarriers.of(floor.get()));
      views.add(
          new DetectorView(
              device,
              floor.get().name(),
              room.get().name(),
              Sweep.from(eye.get(), range.get(), start, span, around)));
    }

    private void miss(Device device, String lineToAdd) {
      notAssessed.add(
          new MissingFact(
              PlanPath.of("devices", device.name()),
              "what '" + device.name() + "' sees",
              lineToAdd));
    }

    private FloorCoverage cover(FloorGeometry floor) {
      List<DetectorView> here =
          views.stream().filter(view -> view.floor().equals(floor.name())).toList();
      List<Geometry> areas =
          here.stream().map(view -> Shapes.area(view.seen().outline(ARC_ERROR_METRES))).toList();
      Geometry furniture =
          Shapes.union(
              floor.floor().furniture().stream()
                  .map(Furniture::outline)
                  .map(Shapes::area)
                  .toList());
      return new FloorCoverage(
          floor.name(),
          floor.rooms().stream().map(room -> cover(room, here, areas, furniture)).toList());
    }

    private RoomCoverage cover(
        RoomGeometry room, List<DetectorView> views, List<Geometry> areas, Geometry furniture) {
      Geometry floor = Shapes.less(Shapes.area(room.outline()), furniture);
      List<String> detectors = new ArrayList<>();
      Geometry seen = Shapes.nothing();
      Geometry twice = Shapes.nothing();
      for (int i = 0; i < areas.size(); i++) {
        if (!areas.get(i).getEnvelopeInternal().intersects(floor.getEnvelopeInternal())) {
          continue;
        }
        Geometry part = Shapes.both(floor, areas.get(i));
        // A sliver through a wall's thickness of rounding is not a view.
        if (part.getArea() >= LEAST_GAP_SQUARE_METRES) {
          detectors.add(views.get(i).device().name());
          twice = Shapes.union(List.of(twice, Shapes.both(seen, part)));
          seen = Shapes.union(List.of(seen, part));
        }
      }
      return new RoomCoverage(
          room.name(),
          floor.getArea(),
          seen.getArea(),
          twice.getArea(),
          detectors,
          gaps(room.name(), Shapes.less(floor, seen)));
    }

    private List<Gap> gaps(String room, Geometry unseen) {
      List<Gap> gaps = new ArrayList<>();
      for (Polygon middle : Shapes.polygons(unseen.buffer(-BODY_METRES / 2))) {
        Geometry gap = Shapes.both(middle.buffer(BODY_METRES / 2), unseen);
        if (gap.getArea() >= LEAST_GAP_SQUARE_METRES) {
          gaps.add(new Gap(gap.getArea(), Shapes.rings(gap), reaches(room, middle)));
        }
      }
      gaps.sort(Comparator.comparingDouble(Gap::squareMetres).reversed());
      return gaps;
    }

    private List<String> reaches(String room, Geometry middle) {
      List<String> reached = new ArrayList<>();
      for (Passage passage : building.graph().passagesOf(room)) {
        passage
            .jambs()
            .filter(jambs ->
                Shapes.line(jambs.left(), jambs.right()).isWithinDistance(middle, REACH_METRES))
            .ifPresent(jambs -> reached.add(passage.name()));
      }
      return reached;
    }
  }
}
