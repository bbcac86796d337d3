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
import keenward.core.building.plane.Polygons;
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
import keenward.core.quantities.Length;

/**
 * What each detector of a plan that watches from afar sees or hears of its floor. Only detectors
 * that a zone watches count.
 *
 * @param views what each motion detector sees, in the order of the plan
 * @param hearings what each acoustic glass-break detector hears
 * @param beams the line of each beam
 * @param notAssessed of which it could not be told, or not all of it
 */
public record DetectorViews(
    List<DetectorView> views,
    List<DetectorView> hearings,
    List<BeamLine> beams,
    List<MissingFact> notAssessed) {

  /**
   * A standing person is seen when no lower than this; the walker of EN 50131-2-2 is 1.6 to 1.85 m
   * tall (from memory).
   */
  public static final double WALKER_METRES = 1.6;

  public DetectorViews {
    views = List.copyOf(views);
    hearings = List.copyOf(hearings);
    beams = List.copyOf(beams);
    notAssessed = List.copyOf(notAssessed);
  }

  /** What the detectors of a plan see of the building made of it. */
  public static DetectorViews of(SitePlan plan, Building building) {
    return new Maker(building).make(plan);
  }

  /** What motion detectors see, by the name of the detector. */
  public Map<String, DetectorView> byDevice() {
    Map<String, DetectorView> byDevice = new LinkedHashMap<>();
    views.forEach(view -> byDevice.put(view.device().name(), view));
    return byDevice;
  }

  /**
   * How far from under a detector a walker of 1.6 m is first seen: where the lowest line of sight
   * comes down to their head.
   *
   * @param heightMetres where the detector hangs
   * @param looksDownDegrees the steepest angle below the horizontal at which it sees
   */
  public static double blindMetres(double heightMetres, double looksDownDegrees) {
    double above = heightMetres - WALKER_METRES;
    if (above <= 0 || looksDownDegrees >= 90) {
      return 0;
    }
    return looksDownDegrees <= 0
        ? Double.POSITIVE_INFINITY
        : above / Math.tan(Math.toRadians(looksDownDegrees));
  }

  private static final class Maker {
    private final Building building;
    private final List<DetectorView> views = new ArrayList<>();
    private final List<DetectorView> hearings = new ArrayList<>();
    private final List<BeamLine> beams = new ArrayList<>();
    private final List<MissingFact> notAssessed = new ArrayList<>();
    private final List<String> withoutAngle = new ArrayList<>();
    private final List<String> withoutHeight = new ArrayList<>();
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
      for (Device device : plan.devices()) {
        if (watched.contains(device.name())) {
          switch (device.kind()) {
            case MOTION, DUAL_MOTION, CURTAIN -> eye(device).ifPresent(this::view);
            case GLASS_BREAK -> hear(device);
            case BEAM -> eye(device).ifPresent(this::beam);
            default -> {}
          }
        }
      }
      missUnder(withoutAngle, "coverage: { looks down: 50 deg }");
      missUnder(withoutHeight, "height: 2.2 m");
      return new DetectorViews(views, hearings, beams, notAssessed);
    }

    private void missUnder(List<String> detectors, String lineToAdd) {
      if (!detectors.isEmpty()) {
        int more = detectors.size() - 1;
        notAssessed.add(
            new MissingFact(
                PlanPath.of("devices", detectors.getFirst()),
                "the zone without sight under '"
                    + detectors.getFirst()
                    + "'"
                    + (more == 0 ? "" : " and " + more + " more"),
                lineToAdd));
      }
    }

    /** Where a detector looks from. */
    private record Placed(Device device, FloorGeometry floor, RoomGeometry room, Point eye) {}

    private Optional<Placed> find(Device device) {
      Optional<DevicePlace> place = building.findDevice(device.name());
      Optional<RoomGeometry> room = place.flatMap(DevicePlace::room).flatMap(building::findRoom);
      return room.flatMap(in ->
          place
              .flatMap(DevicePlace::at)
              .flatMap(at -> Eye.in(in, at))
              .map(eye ->
                  new Placed(
                      device,
                      building.findFloor(place.orElseThrow().floor()).orElseThrow(),
                      in,
                      eye)));
    }

    private Optional<Placed> eye(Device device) {
      Optional<Placed> placed = find(device);
      if (placed.isEmpty()) {
        boolean hasRoom =
            building
                .findDevice(device.name())
                .flatMap(DevicePlace::room)
                .flatMap(building::findRoom)
                .isPresent();
        miss(device, hasRoom ? "at: [0.1, 0.1]" : "room: Hall");
      }
      return placed;
    }

    private void view(Placed placed) {
      Device device = placed.device();
      Optional<Coverage> coverage = device.traits().coverage().find();
      Optional<Double> range = coverage.flatMap(Coverage::rangeMetres);
      if (coverage.isEmpty() || range.isEmpty()) {
        miss(device, "coverage: { pattern: fan, range: 12 m, angle: 90 deg }");
        return;
      }
      double start = -Math.PI;
      double span = SeenArea.FULL_TURN;
      double blind = 0;
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
        blind = blindMetres(device, coverage.get());
      }
      SeenArea seen =
          Sweep.from(placed.eye(), range.get(), start, span, barriers(placed.floor()))
              .beyond(blind);
      views.add(new DetectorView(device, placed.floor().name(), placed.room().name(), seen));
    }

    /** Where the plan does not say enough, nothing is taken off, and that is said. */
    private double blindMetres(Device device, Coverage coverage) {
      Optional<Double> down = coverage.looksDown().map(Angle::degrees).find();
      Optional<Double> height = device.height().map(Length::metres).find();
      if (down.isEmpty() || height.isEmpty()) {
        (down.isEmpty() ? withoutAngle : withoutHeight).add(device.name());
        return 0;
      }
      return DetectorViews.blindMetres(height.get(), down.get());
    }

    private void hear(Device device) {
      Optional<Double> range = device.traits().coverage().find().flatMap(Coverage::rangeMetres);
      Optional<Placed> placed = find(device);
      if (range.isPresent() && placed.isPresent()) {
        hearings.add(
            new DetectorView(
                device,
                placed.get().floor().name(),
                placed.get().room().name(),
                Sweep.from(
                    placed.get().eye(),
                    range.get(),
                    -Math.PI,
                    SeenArea.FULL_TURN,
                    barriers(placed.get().floor()))));
      }
    }

    private void beam(Placed placed) {
      Device device = placed.device();
      Optional<Point> to = device.endsAt().find().flatMap(end -> Eye.in(roomAt(placed, end), end));
      if (to.isEmpty()) {
        miss(device, "ends at: [6, 0.1]");
        return;
      }
      Barriers inTheWay =
          device
              .height()
              .map(Length::metres)
              .find()
              .map(height -> FloorBarriers.of(placed.floor(), height))
              .orElseGet(() -> barriers(placed.floor()));
      Point from = placed.eye();
      boolean isClear =
          Sweep.from(from, from.distanceMetres(to.get()), -Math.PI, SeenArea.FULL_TURN, inTheWay)
              .sees(Polygons.along(from, to.get(), 1 - 1e-6));
      beams.add(
          new BeamLine(
              device, placed.floor().name(), placed.room().name(), from, to.get(), isClear));
    }

    private static RoomGeometry roomAt(Placed placed, Point place) {
      return placed.floor().findRoomAt(place).orElse(placed.room());
    }

    private Barriers barriers(FloorGeometry floor) {
      return barriers.computeIfAbsent(floor.name(), ignored -> FloorBarriers.of(floor));
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
