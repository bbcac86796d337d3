package keenward.core.building.walking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import keenward.core.building.Building;
import keenward.core.building.FloorGeometry;
import keenward.core.building.OpeningPlace;
import keenward.core.building.Passage;
import keenward.core.building.RoomGeometry;
import keenward.core.building.walking.WalkingRoute.Leg;
import keenward.core.plan.Device;
import keenward.core.plan.EdgeSelector;
import keenward.core.plan.Floor;
import keenward.core.plan.MissingFact;
import keenward.core.plan.Opening;
import keenward.core.plan.Pace;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Point;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Stair;
import keenward.core.quantities.Length;
import org.jspecify.annotations.Nullable;

/**
 * Shortest walks in a building: round walls and furniture, through inner doors, over stairs, never
 * outside. Floors are prepared when a walk first touches them; one map serves one thread.
 */
public final class WalkingMap {

  /** A walker needs a way so wide. Common practice, no source. */
  public static final double BODY_METRES = 0.5;

  /** Of two ways over different stairs the one that takes this walker less time is the shorter. */
  private static final Gait USUAL = Gait.of(Pace.USUAL, Gait.Share.MOST);

  /** One may stand within reach of both ends, and so walk that much less. */
  private static final double SLACK_SECONDS = 2 * Place.REACH_METRES / USUAL.levelMetresPerSecond();

  private final SitePlan plan;
  private final Building building;
  private final Avoided avoided;
  private final Map<String, FreeFloor> floors = new HashMap<>();
  private final Map<Place, Optional<Point>> stands = new HashMap<>();
  private final List<Stairway> stairways = new ArrayList<>();
  private final List<MissingFact> notPlaced = new ArrayList<>();

  private record Stairway(Passage stair, Place foot, Place head, double runMetres) {}

  /** What came of looking for a walk. */
  public sealed interface Search {

    /** A walk. */
    record Found(WalkingRoute route) implements Search {}

    /** There is none, as drawn. */
    record Blocked(String why) implements Search {}

    /** The plan does not say enough. */
    record Unknown(MissingFact missing) implements Search {}

    /** The walk, when there is one. */
    default Optional<WalkingRoute> find() {
      return this instanceof Found(WalkingRoute route) ? Optional.of(route) : Optional.empty();
    }
  }

  private WalkingMap(SitePlan plan, Building building, Avoided avoided) {
    this.plan = plan;
    this.building = building;
    this.avoided = avoided;
    for (Floor floor : plan.floors()) {
      floor.stairs().forEach(stair -> addStairway(floor, stair));
    }
  }

  /** The walks of a plan and the building made of it. */
  public static WalkingMap of(SitePlan plan, Building building) {
    return new WalkingMap(plan, building, Avoided.NOTHING);
  }

  /** The walks of somebody who keeps away from more than walls and furniture. */
  public static WalkingMap of(SitePlan plan, Building building, Avoided avoided) {
    return new WalkingMap(plan, building, avoided);
  }

  /** The building. */
  public Building building() {
    return building;
  }

  private void addStairway(Floor floor, Stair stair) {
    Optional<Passage> passage =
        building.graph().passages().stream()
            .filter(each -> each.isStair() && each.name().equals(stair.name()))
            .findFirst();
    Optional<String> upper = plan.findFloorOfRoom(stair.to()).map(Floor::name);
    Optional<Point> at = stair.at().find();
    Optional<Point> endsAt = stair.endsAt().find();
    Optional<Double> run = stair.run().map(Length::metres).find();
    if (passage.isPresent()
        && upper.isPresent()
        && at.isPresent()
        && endsAt.isPresent()
        && run.isPresent()) {
      stairways.add(
          new Stairway(
              passage.get(),
              stairEnd(stair, floor.name(), stair.room(), at.get()),
              stairEnd(stair, upper.get(), stair.to(), endsAt.get()),
              run.get()));
    } else {
      notPlaced.add(
          new MissingFact(
              PlanPath.of("floors", floor.name(), "stairs", stair.name()),
              "walks over '" + stair.name() + "'",
              "at: [10.2, 1], ends at: [10.2, 4], run: 3.6 m"));
    }
  }

  private static Place stairEnd(Stair stair, String floor, String room, Point at) {
    return new Place(stair.name(), floor, Optional.of(room), at, Place.Kind.STAIR);
  }

  /** A device as the end of a walk; empty when the plan does not say where it is. */
  public Optional<Place> place(Device device) {
    return building
        .findDevice(device.name())
        .flatMap(where ->
            where
                .at()
                .map(at ->
                    new Place(device.name(), where.floor(), where.room(), at, Place.Kind.DEVICE)));
  }

  /** An opening as the end of a walk; empty when it has no place in the drawing. */
  public Optional<Place> place(Opening opening) {
    for (FloorGeometry floor : building.floors()) {
      Optional<OpeningPlace> place = floor.findOpening(opening.name());
      if (place.isPresent()) {
        Optional<String> room =
            opening.isOutside()
                ? Optional.of(opening.place().room())
                : opening.place().room().equals(EdgeSelector.OUTSIDE)
                    ? Optional.of(opening.place().beyond())
                    : Optional.empty();
        return Optional.of(
            new Place(
                opening.name(), floor.name(), room, place.get().middle(), Place.Kind.OPENING));
      }
    }
    return Optional.empty();
  }

  /** A room as the end of a walk; empty when it is not drawn. */
  public Optional<Place> place(String room) {
    for (FloorGeometry floor : building.floors()) {
      Optional<RoomGeometry> geometry = floor.findRoom(room);
      if (geometry.isPresent()) {
        return Optional.of(
            new Place(
                room, floor.name(), Optional.of(room), geometry.get().centre(), Place.Kind.ROOM));
      }
    }
    return Optional.empty();
  }

  /** A shortest walk from a door, when it is known, to a device. */
  public Search search(Optional<Opening> door, Device device) {
    Optional<Place> from = door.flatMap(this::place);
    Optional<Place> to = place(device);
    if (from.isEmpty()) {
      return new Search.Unknown(
          new MissingFact(
              PlanPath.of("floors"),
              "walks from "
                  + door.map(each -> "'" + each.name() + "', which has no place in the drawing")
                      .orElse("a door that is not stated"),
              "edge: 1, at: 1 m, width: 0.9 m"));
    }
    if (to.isEmpty()) {
      return new Search.Unknown(
          new MissingFact(
              PlanPath.of("devices", device.name()),
              "walks to '" + device.name() + "', which has no place in the drawing",
              "at: [1.9, 2]"));
    }
    return search(from.get(), to.get());
  }

  /** A shortest walk. */
  public Search search(Place from, Place to) {
    boolean needsStairs = !from.floor().equals(to.floor());
    if (needsStairs && stairways.isEmpty() && !notPlaced.isEmpty()) {
      return new Search.Unknown(notPlaced.getFirst());
    }
    for (Place end : List.of(from, to)) {
      if (stand(end).isEmpty()) {
        return new Search.Blocked(
            "nobody 0.5 m wide can stand within reach of '" + end.name() + "', as drawn");
      }
    }
    Optional<List<Leg>> legs = legs(from, to);
    if (legs.isPresent()) {
      return new Search.Found(WalkingRoute.of(building, from, to, legs.get()));
    }
    if (needsStairs && !notPlaced.isEmpty()) {
      return new Search.Unknown(notPlaced.getFirst());
    }
    return new Search.Blocked(
        "there is no way 0.5 m wide from '" + from.name() + "' to '" + to.name() + "', as drawn");
  }

  private record Reached(double seconds, int place) {}

  /** Dijkstra over both ends and the ends of stairs. */
  private Optional<List<Leg>> legs(Place from, Place to) {
    List<Place> places = new ArrayList<>(List.of(from, to));
    for (Stairway each : stairways) {
      places.add(each.foot());
      places.add(each.head());
    }
    double[] least = new double[places.size()];
    Arrays.fill(least, Double.POSITIVE_INFINITY);
    int[] cameFrom = new int[places.size()];
    @Nullable Leg[] by = new Leg[places.size()];
    PriorityQueue<Reached> open =
        new PriorityQueue<>((one, other) -> Double.compare(one.seconds(), other.seconds()));
    least[0] = 0;
    open.add(new Reached(0, 0));
    while (!open.isEmpty()) {
      Reached here = open.remove();
      if (here.place() == 1) {
        return Optional.of(back(by, cameFrom));
      }
      if (here.seconds() > least[here.place()]) {
        continue;
      }
      for (int next = 1; next < places.size(); next++) {
        // A straight line undercuts every walk: what cannot come first need not be searched.
        if (here.seconds() + atLeast(places, here.place(), next)
            >= Math.min(least[1], least[next])) {
          continue;
        }
        Optional<Leg> leg = leg(places, here.place(), next);
        double seconds = here.seconds() + leg.map(WalkingMap::usualSeconds).orElse(Double.NaN);
        if (seconds < least[next]) {
          least[next] = seconds;
          cameFrom[next] = here.place();
          by[next] = leg.orElseThrow();
          open.add(new Reached(seconds, next));
        }
      }
    }
    return Optional.empty();
  }

  private static double usualSeconds(Leg leg) {
    return leg.metres() / USUAL.metresPerSecond(leg instanceof Leg.Flight);
  }

  private static double atLeast(List<Place> places, int one, int other) {
    Place from = places.get(one);
    Place to = places.get(other);
    return from.floor().equals(to.floor())
        ? from.at().distanceMetres(to.at()) / USUAL.levelMetresPerSecond() - SLACK_SECONDS
        : 0;
  }

  /** Places 2 i + 2 and 2 i + 3 are the two ends of stairway i. */
  private Optional<Leg> leg(List<Place> places, int from, int to) {
    if (from >= 2 && to >= 2 && from / 2 == to / 2) {
      Stairway stairway = stairways.get(from / 2 - 1);
      return Optional.of(new Leg.Flight(stairway.stair(), stairway.runMetres()));
    }
    return level(places.get(from), places.get(to));
  }

  private Optional<Leg> level(Place from, Place to) {
    Optional<Point> begin = stand(from);
    Optional<Point> end = stand(to);
    if (!from.floor().equals(to.floor()) || begin.isEmpty() || end.isEmpty()) {
      return Optional.empty();
    }
    return free(from.floor())
        .way(begin.get(), end.get())
        .map(way -> {
          List<Point> points = new ArrayList<>(way);
          // Somebody who comes in by a door begins in it, not where there is room for a body.
          addOpening(points, 0, from);
          addOpening(points, points.size(), to);
          return new Leg.Level(from.floor(), points);
        });
  }

  private static void addOpening(List<Point> points, int index, Place place) {
    if (place.kind() == Place.Kind.OPENING && !points.contains(place.at())) {
      points.add(index, place.at());
    }
  }

  private static List<Leg> back(@Nullable Leg[] by, int[] cameFrom) {
    List<Leg> legs = new ArrayList<>();
    int place = 1;
    for (Leg leg = by[place]; leg != null; leg = by[place]) {
      legs.add(leg);
      place = cameFrom[place];
    }
    return legs.reversed();
  }

  private FreeFloor free(String floor) {
    return floors.computeIfAbsent(
        floor, name -> FreeFloor.of(building.findFloor(name).orElseThrow(), avoided));
  }

  /** Where one stands at a place. */
  private Optional<Point> stand(Place place) {
    Optional<FloorGeometry> floor = building.findFloor(place.floor());
    Optional<RoomGeometry> room = floor.flatMap(on -> place.room().flatMap(on::findRoom));
    if (floor.isEmpty() || (place.room().isPresent() && room.isEmpty())) {
      return Optional.empty();
    }
    return stands.computeIfAbsent(
        place, where -> free(where.floor()).near(where.at(), room, where.reachMetres()));
  }
}
