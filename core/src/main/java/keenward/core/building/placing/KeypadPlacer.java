package keenward.core.building.placing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.building.FloorGeometry;
import keenward.core.building.RoomGeometry;
import keenward.core.building.plane.Polygons;
import keenward.core.building.walking.EntryWay;
import keenward.core.building.walking.EntryWays;
import keenward.core.building.walking.Gait;
import keenward.core.building.walking.Place;
import keenward.core.building.walking.Sightings;
import keenward.core.building.walking.WalkTime;
import keenward.core.building.walking.WalkingMap;
import keenward.core.building.walking.WalkingRoute;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Opening;
import keenward.core.plan.Pace;
import keenward.core.plan.Partition;
import keenward.core.plan.Point;
import keenward.core.plan.SitePlan;
import keenward.core.progress.Progress;

/**
 * Where one keypad for all entry doors of a partition would need the least delay: of places on the
 * walls, a metre apart, the one whose slowest walk is the shortest. No walk to it leads past a zone
 * that alarms at once.
 */
public final class KeypadPlacer {

  private static final double STEP_METRES = 1;
  private static final double MOST_PLACES_A_ROOM = 200;
  private static final Gait SLOW = Gait.of(Pace.SLOW, Gait.Share.NEARLY_ALL);

  private final SitePlan plan;
  private final WalkingMap map;
  private final Sightings sightings;
  private final List<Device> keypads;
  private final Progress progress;

  private KeypadPlacer(SitePlan plan, WalkingMap map, Sightings sightings, Progress progress) {
    this.plan = plan;
    this.map = map;
    this.keypads = plan.devicesOf(DeviceKind.KEYPAD).toList();
    this.sightings = sightings;
    this.progress = progress;
  }

  /**
   * A place for a keypad.
   *
   * @param partition name of the partition
   * @param floor name of the floor
   * @param room name of the room
   * @param at where
   * @param seconds for each entry door what 95 of 100 slow people need, door and keypad included
   * @param nowSeconds what the slowest of the doors takes to its nearest keypad of the plan; empty
   *     when there is none
   */
  public record KeypadPlace(
      String partition,
      String floor,
      String room,
      Point at,
      Map<String, Double> seconds,
      Optional<Double> nowSeconds) {

    public KeypadPlace {
      seconds = Collections.unmodifiableMap(new LinkedHashMap<>(seconds));
    }

    /** What the slowest way in takes. */
    public double mostSeconds() {
      return seconds.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
    }
  }

  /**
   * What came of it.
   *
   * @param places the best place of each partition that has entry doors with a place in the drawing
   * @param none partitions of which every walk leads past a zone that alarms at once, or to no wall
   */
  public record KeypadPlaces(List<KeypadPlace> places, List<String> none) {
    public KeypadPlaces {
      places = List.copyOf(places);
      none = List.copyOf(none);
    }
  }

  /** Looks for the places. */
  public static KeypadPlaces propose(
      SitePlan plan, WalkingMap map, EntryWays ways, Sightings sightings, Progress progress) {
    KeypadPlacer placer = new KeypadPlacer(plan, map, sightings, progress);
    List<KeypadPlace> places = new ArrayList<>();
    List<String> none = new ArrayList<>();
    for (Partition partition : plan.partitions()) {
      List<EntryWay> here =
          ways.ways().stream()
              .filter(way -> way.zone().partitions().contains(partition.name()))
              .filter(way -> way.door().flatMap(map::place).isPresent())
              .toList();
      if (!here.isEmpty()) {
        placer.best(partition, here).ifPresentOrElse(places::add, () -> none.add(partition.name()));
      }
    }
    return new KeypadPlaces(places, none);
  }

  private Optional<KeypadPlace> best(Partition partition, List<EntryWay> ways) {
    List<Candidate> candidates = candidates(ways);
    Optional<Double> now = now(partition, ways);
    KeypadPlace best = null;
    for (int i = 0; i < candidates.size(); i++) {
      if (i % 16 == 0) {
        progress.check("looking for a keypad of '" + partition.name() + "'", i, candidates.size());
      }
      Candidate each = candidates.get(i);
      // Sorted by what a straight line would take: nothing further on can be better.
      if (best != null && each.atLeastSeconds() >= best.mostSeconds()) {
        break;
      }
      Optional<KeypadPlace> tried = walk(partition, ways, now, each.place());
      if (tried.isPresent() && (best == null || tried.get().mostSeconds() < best.mostSeconds())) {
        best = tried.get();
      }
    }
    return Optional.ofNullable(best);
  }

  private record Candidate(Place place, double atLeastSeconds) {}

  private List<Candidate> candidates(List<EntryWay> ways) {
    List<Candidate> candidates = new ArrayList<>();
    for (FloorGeometry floor : map.building().floors()) {
      for (RoomGeometry room : floor.rooms()) {
        double step =
            Math.max(STEP_METRES, Polygons.perimeter(room.outline()) / MOST_PLACES_A_ROOM);
        for (int i = 0; i < room.outline().size(); i++) {
          Point from = room.outline().get(i);
          Point to = room.outline().get((i + 1) % room.outline().size());
          for (Point on : Spots.along(from, to, step)) {
            inside(floor, room, on)
                .map(at ->
                    new Place(
                        "keypad", floor.name(), Optional.of(room.name()), at, Place.Kind.DEVICE))
                .map(place -> new Candidate(place, atLeastSeconds(ways, place)))
                .ifPresent(candidates::add);
          }
        }
      }
    }
    candidates.sort(Comparator.comparingDouble(Candidate::atLeastSeconds));
    return candidates;
  }

  private Optional<Point> inside(FloorGeometry floor, RoomGeometry room, Point on) {
    if (Spots.isInOpening(floor, on)) {
      return Optional.empty();
    }
    double away = on.distanceMetres(room.centre());
    Point at = Polygons.along(on, room.centre(), away == 0 ? 0 : Spots.CLEAR_METRES / away);
    Point rounded = Spots.inCentimetres(at);
    return room.contains(rounded) ? Optional.of(rounded) : Optional.empty();
  }

  private double atLeastSeconds(List<EntryWay> ways, Place place) {
    double most = 0;
    for (EntryWay way : ways) {
      Place door = way.door().flatMap(map::place).orElseThrow();
      double metres =
          door.floor().equals(place.floor())
              ? Math.max(0, door.at().distanceMetres(place.at()) - 1)
              : 0;
      most = Math.max(most, metres / SLOW.levelMetresPerSecond());
    }
    return most;
  }

  private Optional<KeypadPlace> walk(
      Partition partition, List<EntryWay> ways, Optional<Double> now, Place place) {
    Map<String, Double> seconds = new LinkedHashMap<>();
    for (EntryWay way : ways) {
      Opening door = way.door().orElseThrow();
      Optional<WalkingRoute> route =
          map.place(door).flatMap(from -> map.search(from, place).find());
      if (route.isEmpty() || alarmsAtOnce(way, route.get())) {
        return Optional.empty();
      }
      seconds.merge(
          door.name(),
          WalkTime.in(route.get(), Optional.empty()).seconds(Gait.Share.NEARLY_ALL),
          Math::max);
    }
    return Optional.of(
        new KeypadPlace(
            partition.name(), place.floor(), place.room().orElseThrow(), place.at(), seconds, now));
  }

  /** What the slowest door takes to the nearest keypad that serves the partition. */
  private Optional<Double> now(Partition partition, List<EntryWay> ways) {
    double most = 0;
    for (EntryWay way : ways) {
      Optional<Double> nearest =
          keypads.stream()
              .filter(keypad ->
                  partition.keypads().isEmpty() || partition.keypads().contains(keypad.name()))
              .flatMap(keypad -> map.search(way.door(), keypad).find().stream())
              .map(route -> WalkTime.in(route, Optional.empty()).seconds(Gait.Share.NEARLY_ALL))
              .min(Comparator.naturalOrder());
      if (nearest.isEmpty()) {
        return Optional.empty();
      }
      most = Math.max(most, nearest.get());
    }
    return Optional.of(most);
  }

  private boolean alarmsAtOnce(EntryWay way, WalkingRoute route) {
    return sightings.onWalk(route).stream()
        .anyMatch(sighting -> way.isAlarmedBy(plan, sighting.zone()));
  }
}
