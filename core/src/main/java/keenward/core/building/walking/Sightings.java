package keenward.core.building.walking;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.building.Building;
import keenward.core.building.DevicePlace;
import keenward.core.building.Route;
import keenward.core.building.coverage.BeamLine;
import keenward.core.building.coverage.CoverageMap;
import keenward.core.building.coverage.DetectorView;
import keenward.core.building.coverage.DetectorViews;
import keenward.core.building.plane.Polygons;
import keenward.core.building.plane.SeenArea;
import keenward.core.building.walking.WalkingRoute.Leg;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Point;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.plan.ZoneResponse;

/**
 * Which burglary zones see somebody who walks: contacts by the doors passed, detectors where the
 * walk leads through what they see, beams where it crosses their line. Where the drawing does not
 * say what a motion detector sees, it is taken to see all of its room, and a curtain nothing.
 */
public final class Sightings {
  private final Map<String, List<Zone>> byRoom = new LinkedHashMap<>();
  private final Map<String, List<Zone>> byOpening = new LinkedHashMap<>();
  private final Map<String, List<Zone>> byBlindRoom = new LinkedHashMap<>();
  private final List<Watcher> watchers = new ArrayList<>();
  private final List<BeamWatcher> beams = new ArrayList<>();
  private final List<Zone> placeless = new ArrayList<>();

  private record Watcher(Zone zone, DetectorView view) {}

  private record BeamWatcher(Zone zone, BeamLine beam) {}

  private Sightings() {}

  /**
   * One zone that sees a walker.
   *
   * @param zone the zone
   * @param metres how far along the walk it sees them first; empty when only rooms are known
   * @param how in words: what the walk does to be seen
   */
  public record Sighting(Zone zone, Optional<Double> metres, String how) {}

  /** What the burglary zones of a plan see. */
  public static Sightings of(SitePlan plan, Building building, DetectorViews views) {
    Map<String, String> roomOf = new HashMap<>();
    for (DevicePlace place : building.devices()) {
      place.room().ifPresent(room -> roomOf.put(place.device().name(), room));
    }
    Map<String, DetectorView> viewOf = views.byDevice();
    Map<String, BeamLine> beamOf = new HashMap<>();
    views.beams().forEach(beam -> beamOf.put(beam.device().name(), beam));
    Sightings sightings = new Sightings();
    for (Zone zone : plan.zones()) {
      if (isArmed(zone.response())) {
        sightings.add(zone, roomOf, viewOf, beamOf);
      }
    }
    return sightings;
  }

  /** The zones that see somebody somewhere in a room. */
  public List<Zone> inRoom(String room) {
    return List.copyOf(byRoom.getOrDefault(room, List.of()));
  }

  /** The zones whose contact is on an opening. */
  public List<Zone> atOpening(String opening) {
    return List.copyOf(byOpening.getOrDefault(opening, List.of()));
  }

  /**
   * The zones that see somebody on a walk, in the order met, each once; the door walked in by is
   * not among them.
   */
  public List<Sighting> onWalk(Walk walk) {
    return walk.drawn()
        .find()
        .map(this::onWalk)
        .orElseGet(() -> {
          Met met = new Met();
          byRooms(met, walk.route());
          return met.inOrder();
        });
  }

  /** The same for a walk as drawn. */
  public List<Sighting> onWalk(WalkingRoute walk) {
    Met met = new Met();
    for (int index = 0; index < walk.rooms().size(); index++) {
      double entered = index == 0 ? 0 : walk.crossings().get(index - 1).metres();
      for (Zone zone : byBlindRoom.getOrDefault(walk.rooms().get(index), List.of())) {
        met.add(zone, Optional.of(entered), throughRoom(walk.rooms().get(index)));
      }
    }
    for (WalkingRoute.Crossing crossing : walk.crossings()) {
      String door = crossing.passage().name();
      for (Zone zone : atOpening(door)) {
        met.add(zone, Optional.of(crossing.metres()), throughDoor(door));
      }
    }
    for (Watcher watcher : watchers) {
      firstSeenMetres(walk, watcher.view())
          .ifPresent(metres ->
              met.add(
                  watcher.zone(),
                  Optional.of(metres),
                  "leads through what '" + watcher.view().device().name() + "' sees"));
    }
    for (BeamWatcher watcher : beams) {
      firstBrokenMetres(walk, watcher.beam())
          .ifPresent(metres ->
              met.add(
                  watcher.zone(),
                  Optional.of(metres),
                  "leads through the beam '" + watcher.beam().device().name() + "'"));
    }
    return met.inOrder();
  }

  /** What was met, each zone where it sees the walker first. */
  private static final class Met {
    private final Map<Integer, Sighting> byZone = new LinkedHashMap<>();

    void add(Zone zone, Optional<Double> metres, String how) {
      byZone.merge(
          zone.number(),
          new Sighting(zone, metres, how),
          (one, other) -> metres(other) < metres(one) ? other : one);
    }

    /** By distance; where only rooms are known, as met. */
    List<Sighting> inOrder() {
      return byZone.values().stream().sorted(Comparator.comparingDouble(Met::metres)).toList();
    }

    private static double metres(Sighting sighting) {
      return sighting.metres().orElse(0.0);
    }
  }

  private void byRooms(Met met, Route route) {
    for (int index = 0; index < route.rooms().size(); index++) {
      String room = route.rooms().get(index);
      inRoom(room).forEach(zone -> met.add(zone, Optional.empty(), throughRoom(room)));
      if (index < route.passages().size()) {
        String door = route.passages().get(index).name();
        atOpening(door).forEach(zone -> met.add(zone, Optional.empty(), throughDoor(door)));
      }
    }
  }

  private static String throughRoom(String room) {
    return "leads through room '" + room + "'";
  }

  private static String throughDoor(String door) {
    return "leads through door '" + door + "'";
  }

  /** How far along a walk a detector sees the walker first. */
  static Optional<Double> firstSeenMetres(WalkingRoute walk, DetectorView view) {
    List<List<Point>> outlines = view.seen().outlines(CoverageMap.ARC_ERROR_METRES);
    return firstMetres(
        walk, view.floor(), (from, to) -> firstSeenPart(view.seen(), outlines, from, to));
  }

  /** How far along a walk the walker breaks a beam first. */
  static Optional<Double> firstBrokenMetres(WalkingRoute walk, BeamLine beam) {
    return firstMetres(
        walk,
        beam.floor(),
        (from, to) ->
            Polygons.cross(from, to, beam.from(), beam.to())
                ? Optional.of(
                    Polygons.parameter(
                        from, to, Polygons.crossing(from, to, beam.from(), beam.to())))
                : Optional.empty());
  }

  /** Where something happens first on a straight piece, as a part of it. */
  private interface OnPiece {
    Optional<Double> first(Point from, Point to);
  }

  private static Optional<Double> firstMetres(WalkingRoute walk, String onFloor, OnPiece happens) {
    double walked = 0;
    for (Leg leg : walk.legs()) {
      if (leg instanceof Leg.Level(String floor, List<Point> points) && floor.equals(onFloor)) {
        double here = walked;
        for (int i = 1; i < points.size(); i++) {
          Point from = points.get(i - 1);
          Point to = points.get(i);
          double length = from.distanceMetres(to);
          Optional<Double> part = happens.first(from, to);
          if (part.isPresent()) {
            return Optional.of(here + part.get() * length);
          }
          here += length;
        }
      }
      walked += leg.metres();
    }
    return Optional.empty();
  }

  /** Sight begins or ends only where a straight piece crosses an outline of what is seen. */
  private static Optional<Double> firstSeenPart(
      SeenArea seen, List<List<Point>> outlines, Point from, Point to) {
    List<Double> parts = new ArrayList<>(List.of(0.0, 1.0));
    for (List<Point> outline : outlines) {
      for (int i = 0; i < outline.size(); i++) {
        Point one = outline.get(i);
        Point other = outline.get((i + 1) % outline.size());
        if (Polygons.cross(from, to, one, other)) {
          parts.add(Polygons.parameter(from, to, Polygons.crossing(from, to, one, other)));
        }
      }
    }
    parts.sort(null);
    for (int i = 1; i < parts.size(); i++) {
      double middle = (parts.get(i - 1) + parts.get(i)) / 2;
      if (seen.sees(Polygons.along(from, to, middle))) {
        return Optional.of(parts.get(i - 1));
      }
    }
    return Optional.empty();
  }

  /**
   * Zones with a motion detector or contact that might be on a walk, since the plan gives it no
   * place.
   */
  public List<Zone> placeless() {
    return List.copyOf(placeless);
  }

  private void add(
      Zone zone,
      Map<String, String> roomOf,
      Map<String, DetectorView> viewOf,
      Map<String, BeamLine> beamOf) {
    boolean open = zone.devices().isEmpty();
    for (ZoneDevice each : zone.devices()) {
      switch (each) {
        case ZoneDevice.Unplaced(DeviceKind kind) -> open |= isMotion(kind);
        case ZoneDevice.Fitted fitted -> {
          Device device = fitted.device();
          DetectorView view = viewOf.get(device.name());
          if (view != null) {
            watchers.add(new Watcher(zone, view));
          }
          BeamLine beam = beamOf.get(device.name());
          if (beam != null) {
            beams.add(new BeamWatcher(zone, beam));
          }
          if (isMotion(device.kind())) {
            String room = roomOf.get(device.name());
            open |= room == null;
            if (room != null) {
              put(byRoom, room, zone);
            }
            if (room != null && view == null) {
              put(byBlindRoom, room, zone);
            }
          }
          device.opening().find().ifPresent(opening -> put(byOpening, opening, zone));
        }
      }
    }
    if (open) {
      placeless.add(zone);
    }
  }

  private static void put(Map<String, List<Zone>> map, String key, Zone zone) {
    List<Zone> zones = map.computeIfAbsent(key, ignored -> new ArrayList<>());
    if (!zones.contains(zone)) {
      zones.add(zone);
    }
  }

  private static boolean isMotion(DeviceKind kind) {
    return kind == DeviceKind.MOTION || kind == DeviceKind.DUAL_MOTION;
  }

  private static boolean isArmed(ZoneResponse response) {
    return switch (response) {
      case ENTRY_EXIT, FOLLOWER, PERIMETER, INSTANT -> true;
      default -> false;
    };
  }
}
