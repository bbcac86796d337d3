package keenward.core.rules.survey;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import keenward.core.building.Building;
import keenward.core.building.DevicePlace;
import keenward.core.building.FloorGeometry;
import keenward.core.building.OpeningPlace;
import keenward.core.building.coverage.BeamLine;
import keenward.core.building.coverage.DetectorView;
import keenward.core.building.coverage.DetectorViews;
import keenward.core.building.plane.Polygons;
import keenward.core.building.plane.SeenArea;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Material;
import keenward.core.plan.Opening;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.Point;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.rules.Kinds;
import org.jspecify.annotations.Nullable;

/** Which detectors behind burglary zones guard which openings. */
final class OpeningGuards {
  /** How an opening is guarded. */
  sealed interface Guard {

    /** A detector on it, or one that sees who comes in by it. */
    record Watched() implements Guard {}

    /** Detectors in its room, none of which sees it. */
    record NotSeen(List<Device> inRoom) implements Guard {}

    /** Nothing on it and nothing in its room. */
    record Nothing() implements Guard {}
  }

  /** A beam that passes no farther from an opening guards it. Common practice, no source. */
  private static final double BEAM_METRES = 1;

  private final Map<String, List<Device>> onOpening = new LinkedHashMap<>();
  private final Map<String, List<Device>> inRoom = new LinkedHashMap<>();
  private final Map<String, Point> insides = new LinkedHashMap<>();
  private final Map<String, String> floorOf = new LinkedHashMap<>();
  private final Map<String, DetectorView> watching = new LinkedHashMap<>();
  private final Map<String, SeenArea> hearing = new LinkedHashMap<>();
  private final Map<String, BeamLine> beams = new LinkedHashMap<>();
  private final List<Zone> placeless = new ArrayList<>();

  OpeningGuards(SitePlan plan, Building building, DetectorViews views) {
    for (FloorGeometry floor : building.floors()) {
      for (OpeningPlace place : floor.openings()) {
        insides.put(place.opening().name(), place.justInside());
        floorOf.put(place.opening().name(), floor.name());
      }
    }
    views.hearings().forEach(heard -> hearing.put(heard.device().name(), heard.seen()));
    views.beams().forEach(beam -> beams.put(beam.device().name(), beam));
    Map<String, DetectorView> viewOf = views.byDevice();
    Map<String, DevicePlace> places = new LinkedHashMap<>();
    for (DevicePlace place : building.devices()) {
      places.put(place.device().name(), place);
    }
    for (Zone zone : plan.zones()) {
      if (Kinds.isBurglary(zone.response())) {
        add(zone, places, viewOf);
      }
    }
  }

  /** Burglary zones that may guard any opening, since the plan does not say where they are. */
  List<Zone> placeless() {
    return List.copyOf(placeless);
  }

  Guard guard(Opening opening) {
    if (onOpening.containsKey(opening.name()) || isSeen(opening)) {
      return new Guard.Watched();
    }
    List<Device> blind = new ArrayList<>();
    for (Device each : inRoom.getOrDefault(opening.place().room(), List.of())) {
      boolean isMotion = Kinds.isRoomMotion(each.kind());
      boolean isShell = isShell(each.kind(), opening);
      if ((isShell && mayReach(each, opening)) || (isMotion && maySee(each, opening))) {
        return new Guard.Watched();
      }
      if (isMotion || isShell) {
        blind.add(each);
      }
    }
    return blind.isEmpty() ? new Guard.Nothing() : new Guard.NotSeen(blind);
  }

  private void add(Zone zone, Map<String, DevicePlace> places, Map<String, DetectorView> viewOf) {
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
        inRoom.computeIfAbsent(room.get(), ignored -> new ArrayList<>()).add(device);
        DetectorView view = viewOf.get(device.name());
        if (view != null) {
          watching.put(device.name(), view);
        }
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

  /** Whether somebody who comes in by the opening is seen there by any detector of the floor. */
  private boolean isSeen(Opening opening) {
    Point inside = inside(opening);
    return inside != null
        && watching.values().stream()
            .anyMatch(view ->
                Objects.equals(view.floor(), floorOf.get(opening.name()))
                    && view.seen().sees(inside));
  }

  /** Whether a motion detector of its room may see it, since the plan does not say what it sees. */
  private boolean maySee(Device detector, Opening opening) {
    return inside(opening) == null || !watching.containsKey(detector.name());
  }

  /**
   * Whether a shell detector of its room reaches an opening: an acoustic one within its range and
   * in line of sight, a beam when its line passes close by. What the plan does not say is taken to
   * reach; so are all others.
   */
  private boolean mayReach(Device detector, Opening opening) {
    Point inside = inside(opening);
    SeenArea heard = hearing.get(detector.name());
    BeamLine beam = beams.get(detector.name());
    if (inside == null) {
      return true;
    }
    return (heard == null || heard.sees(inside))
        && (beam == null || Polygons.distance(beam.from(), beam.to(), inside) <= BEAM_METRES);
  }

  private @Nullable Point inside(Opening opening) {
    return insides.get(opening.name());
  }
}
