package keenward.core.rules.survey;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.building.Building;
import keenward.core.building.DevicePlace;
import keenward.core.building.FloorGeometry;
import keenward.core.building.OpeningPlace;
import keenward.core.plan.Coverage;
import keenward.core.plan.CoveragePattern;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Fact;
import keenward.core.plan.Material;
import keenward.core.plan.Opening;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.Point;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.quantities.Angle;
import keenward.core.quantities.Length;
import keenward.core.rules.Kinds;

/** Which detectors behind burglary zones guard which openings. */
final class OpeningGuards {
  /** How an opening is guarded. */
  sealed interface Guard {

    /** A detector on it, or one that sees it. */
    record Watched() implements Guard {}

    /** Detectors in its room, none of which sees it. */
    record NotSeen(List<Device> inRoom) implements Guard {}

    /** Nothing on it and nothing in its room. */
    record Nothing() implements Guard {}
  }

  private record InRoom(Device device, Optional<Point> at) {}

  private final Map<String, List<Device>> onOpening = new LinkedHashMap<>();
  private final Map<String, List<InRoom>> inRoom = new LinkedHashMap<>();
  private final Map<String, Point> middles = new LinkedHashMap<>();
  private final List<Zone> placeless = new ArrayList<>();

  OpeningGuards(SitePlan plan, Building building) {
    for (FloorGeometry floor : building.floors()) {
      for (OpeningPlace place : floor.openings()) {
        middles.put(place.opening().name(), place.middle());
      }
    }
    Map<String, DevicePlace> places = new LinkedHashMap<>();
    building.devices().forEach(place -> places.put(place.device().name(), place));
    for (Zone zone : plan.zones()) {
      if (Kinds.isBurglary(zone.response())) {
        add(zone, places);
      }
    }
  }

  /** Burglary zones that may guard any opening, since the plan does not say where they are. */
  List<Zone> placeless() {
    return List.copyOf(placeless);
  }

  Guard guard(Opening opening) {
    if (onOpening.containsKey(opening.name())) {
      return new Guard.Watched();
    }
    List<Device> blind = new ArrayList<>();
    for (InRoom each : inRoom.getOrDefault(opening.place().room(), List.of())) {
      if (isShell(each.device().kind(), opening) || sees(each, opening)) {
        return new Guard.Watched();
      }
      if (Kinds.isRoomMotion(each.device().kind())) {
        blind.add(each.device());
      }
    }
    return blind.isEmpty() ? new Guard.Nothing() : new Guard.NotSeen(blind);
  }

  private void add(Zone zone, Map<String, DevicePlace> places) {
    boolean open = zone.devices().isEmpty();
    for (ZoneDevice each : zone.devices()) {
      if (!(each instanceof ZoneDevice.Fitted fitted)) {
        open = true;
        continue;
      }
      Device device = fitted.device();
      List<String> inputs = device.traits().inputs();
      // What is wired to a further input hangs somewhere else than the device itself.
      boolean isFurther = !inputs.isEmpty() && !inputs.getFirst().equals(fitted.inputName());
      Optional<String> room =
          Optional.ofNullable(places.get(device.name())).flatMap(DevicePlace::room);
      if (isFurther) {
        open = true;
      } else if (device.opening().isGiven()) {
        onOpening
            .computeIfAbsent(device.opening().orElse(""), ignored -> new ArrayList<>())
            .add(device);
      } else if (room.isPresent() && device.kind() != DeviceKind.CONTACT) {
        inRoom
            .computeIfAbsent(room.get(), ignored -> new ArrayList<>())
            .add(new InRoom(device, device.at().find()));
      } else {
        open = true;
      }
    }
    if (open) {
      placeless.add(zone);
    }
  }

  private static boolean isShell(DeviceKind kind, Opening opening) {
    return switch (kind) {
      case CURTAIN, BEAM -> true;
      case GLASS_BREAK, SHOCK ->
          opening.material().orNull() == Material.GLASS
              || opening.kind() == OpeningKind.WINDOW
              || opening.kind() == OpeningKind.FIXED_WINDOW
              || opening.kind() == OpeningKind.ROOF_WINDOW;
      default -> false;
    };
  }

  /**
   * Whether the pattern reaches the middle of the opening; what the plan does not state is taken to
   * reach.
   */
  private boolean sees(InRoom detector, Opening opening) {
    if (!Kinds.isRoomMotion(detector.device().kind())) {
      return false;
    }
    Optional<Coverage> coverage = detector.device().traits().coverage().find();
    Optional<Point> target = Optional.ofNullable(middles.get(opening.name()));
    if (coverage.isEmpty() || target.isEmpty() || detector.at().isEmpty()) {
      return true;
    }
    Point from = detector.at().get();
    double range = coverage.get().range().map(Length::metres).orElse(Double.MAX_VALUE);
    if (from.distanceMetres(target.get()) > range) {
      return false;
    }
    Fact<Angle> angle = coverage.get().angle();
    Fact<Angle> bearing = detector.device().bearing();
    boolean isFan = coverage.get().pattern().orElse(CoveragePattern.FAN) == CoveragePattern.FAN;
    if (!isFan || !angle.isGiven() || !bearing.isGiven()) {
      return true;
    }
    double east = target.get().xMetres() - from.xMetres();
    double north = target.get().yMetres() - from.yMetres();
    double towards = Math.toDegrees(Math.atan2(east, north));
    double looking = bearing.map(Angle::degrees).orElse(0.0);
    double off = Math.abs(Math.IEEEremainder(towards - looking, 360));
    return off <= angle.map(Angle::degrees).orElse(360.0) / 2;
  }
}
