package keenward.core.building.coverage;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import keenward.core.building.Building;
import keenward.core.building.DevicePlace;
import keenward.core.building.FloorGeometry;
import keenward.core.building.RoomGeometry;
import keenward.core.building.plane.Barriers;
import keenward.core.building.plane.SeenArea;
import keenward.core.building.plane.Sweep;
import keenward.core.plan.Coverage;
import keenward.core.plan.CoveragePattern;
import keenward.core.plan.Device;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Point;
import keenward.core.plan.SitePlan;
import keenward.core.plan.ZoneDevice;
import keenward.core.quantities.Angle;

/**
 * What each motion detector of a plan sees of its floor. Only detectors that a zone watches count.
 *
 * @param views what each sees, in the order of the plan
 * @param notAssessed of which it could not be told
 */
public record DetectorViews(List<DetectorView> views, List<MissingFact> notAssessed) {

  public DetectorViews {
    views = List.copyOf(views);
    notAssessed = List.copyOf(notAssessed);
  }

  /** What the detectors of a plan see of the building made of it. */
  public static DetectorViews of(SitePlan plan, Building building) {
    return new Maker(building).make(plan);
  }

  /** The same by the name of the detector. */
  public Map<String, DetectorView> byDevice() {
    Map<String, DetectorView> byDevice = new LinkedHashMap<>();
    views.forEach(view -> byDevice.put(view.device().name(), view));
    return byDevice;
  }

  private static final class Maker {
    private final Building building;
    private final List<DetectorView> views = new ArrayList<>();
    private final List<MissingFact> notAssessed = new ArrayList<>();
    private final Map<String, Barriers> barriers = new HashMap<>();

    Maker(Building building) {
      this.building = building;
    }

    DetectorViews make(SitePlan plan) {
      Set<String> watched = new LinkedHashSet<>();
      plan.zones().stream()
          .flatMap(zone -> zone.devices().stream())
          .filter(ZoneDevice.Fitted.class::isInstance)
          .map(each -> ((ZoneDevice.Fitted) each).device().name())
          .forEach(watched::add);
      plan.devices().stream()
          .filter(device -> watched.contains(device.name()) && seesPeople(device))
          .forEach(this::view);
      return new DetectorViews(views, notAssessed);
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
      Optional<RoomGeometry> room = place.flatMap(DevicePlace::room).flatMap(building::findRoom);
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
      Optional<Double> range = coverage.flatMap(Coverage::rangeMetres);
      if (coverage.isEmpty() || range.isEmpty()) {
        miss(device, "coverage: { pattern: fan, range: 12 m, angle: 90 deg }");
        return;
      }
      double start = -Math.PI;
      double span = SeenArea.FULL_TURN;
      if (coverage.get().shape() != CoveragePattern.CEILING) {
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
  }
}
