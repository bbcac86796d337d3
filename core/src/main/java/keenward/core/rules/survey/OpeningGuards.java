package keenward.core.rules.survey;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import keenward.core.building.Building;
import keenward.core.building.DevicePlace;
import keenward.core.building.FloorGeometry;
import keenward.core.building.OpeningPlace;
import keenward.core.building.coverage.DetectorView;
import keenward.core.building.coverage.DetectorViews;
import keenward.core.building.coverage.Eye;
import keenward.core.building.coverage.FloorBarriers;
import keenward.core.building.plane.Barriers;
import keenward.core.building.plane.SeenArea;
import keenward.core.building.plane.Sweep;
import keenward.core.plan.Coverage;
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

  private static final double STEP_METRES = 0.3;

  private final Map<String, List<Device>> onOpening = new LinkedHashMap<>();
  private final Map<String, List<Device>> inRoom = new LinkedHashMap<>();
  private final Map<String, Point> insides = new LinkedHashMap<>();
  private final Map<String, String> floorOf = new LinkedHashMap<>();
  private final Map<String, DetectorView> watching = new LinkedHashMap<>();
  private final Map<String, SeenArea> hearing = new LinkedHashMap<>();
  private final List<Zone> placeless = new ArrayList<>();

  OpeningGuards(SitePlan plan, Building building, DetectorViews views) {
    for (FloorGeometry floor : building.floors()) {
      for (OpeningPlace place : floor.openings()) {
        insides.put(place.opening().name(), step(place));
        floorOf.put(place.opening().name(), floor.name());
      }
    }
    Map<String, DetectorView> viewOf = views.byDevice();
    Map<String, Barriers> barriers = new HashMap<>();
    Map<String, DevicePlace> places = new LinkedHashMap<>();
    for (DevicePlace place : building.devices()) {
      places.put(place.device().name(), place);
      if (place.device().kind() == DeviceKind.GLASS_BREAK) {
        SeenArea heard = hearing(place, building, barriers);
        if (heard != null) {
          hearing.put(place.device().name(), heard);
        }
      }
    }
    for (Zone zone : plan.zones()) {
      if (Kinds.isBurglary(zone.response())) {
        add(zone, places, viewOf);
      }
    }
  }

  /** Where somebody stands who has come in by an opening. */
  private static Point step(OpeningPlace place) {
    return new Point(
        place.middle().xMetres() + STEP_METRES * place.inward().xMetres(),
        place.middle().yMetres() + STEP_METRES * place.inward().yMetres());
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
      if ((isShell && mayHear(each, opening)) || (isMotion && maySee(each, opening))) {
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
   * Whether an acoustic glass-break detector reaches a pane: within its range and in line of sight.
   * What the plan does not say is taken to reach; so are all other shell detectors.
   */
  private boolean mayHear(Device detector, Opening opening) {
    Point inside = inside(opening);
    SeenArea heard = hearing.get(detector.name());
    return detector.kind() != DeviceKind.GLASS_BREAK
        || inside == null
        || heard == null
        || heard.sees(inside);
  }

  /** What an acoustic detector hears; null when the plan does not say enough. */
  private static @Nullable SeenArea hearing(
      DevicePlace place, Building building, Map<String, Barriers> barriers) {
    Optional<Point> ear =
        place
            .room()
            .flatMap(building::findRoom)
            .flatMap(room -> place.at().flatMap(at -> Eye.in(room, at)));
    Optional<Double> range =
        place.device().traits().coverage().find().flatMap(Coverage::rangeMetres);
    return ear.isEmpty() || range.isEmpty()
        ? null
        : Sweep.from(
            ear.get(),
            range.get(),
            -Math.PI,
            SeenArea.FULL_TURN,
            barriers.computeIfAbsent(
                place.floor(), floor -> FloorBarriers.of(building.findFloor(floor).orElseThrow())));
  }

  private @Nullable Point inside(Opening opening) {
    return insides.get(opening.name());
  }
}
