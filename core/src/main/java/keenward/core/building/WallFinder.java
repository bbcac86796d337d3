package keenward.core.building;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import keenward.core.building.plane.Polygons;
import keenward.core.plan.EdgeSelector;
import keenward.core.plan.Fact;
import keenward.core.plan.Floor;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Point;
import keenward.core.plan.SitePlan;

/** Finds the walls that a selector of one floor means. */
final class WallFinder {

  private final SitePlan plan;
  private final Floor floor;
  private final Texts texts;
  private final Set<String> onFloor = new HashSet<>();
  private final Map<String, RoomGeometry> drawn = new HashMap<>();
  private final Map<Set<String>, List<WallSegment>> walls = new HashMap<>();

  /**
   * What a selector means.
   *
   * @param walls the walls; empty when something is in the way
   * @param problem what is wrong
   * @param undrawn a room that has no sound outline, so that nothing can be said
   */
  record Found(
      List<WallSegment> walls, Optional<BuildingProblem> problem, Optional<String> undrawn) {}

  WallFinder(SitePlan plan, Floor floor, List<RoomGeometry> rooms, List<WallSegment> walls) {
    this.plan = plan;
    this.floor = floor;
    texts = new Texts(floor.unit());
    floor.rooms().forEach(room -> onFloor.add(room.name()));
    rooms.forEach(room -> drawn.put(room.name(), room));
    for (WallSegment wall : walls) {
      this.walls
          .computeIfAbsent(Set.of(wall.room(), wall.beyond()), ignored -> new ArrayList<>())
          .add(wall);
    }
  }

  /**
   * The one wall that the edge number picks, or every wall between the two when there is no number.
   */
  Found find(EdgeSelector place, PlanPath path) {
    for (String name : List.of(place.room(), place.beyond())) {
      boolean outside = name.equals(EdgeSelector.OUTSIDE) && !name.equals(place.room());
      if (outside) {
        continue;
      }
      if (!onFloor.contains(name)) {
        return problem(elsewhere(name, path));
      }
      if (!drawn.containsKey(name)) {
        return new Found(List.of(), Optional.empty(), Optional.of(name));
      }
    }
    List<WallSegment> between = between(place);
    if (between.isEmpty()) {
      return problem(noSharedEdge(place, path));
    }
    if (!(place.edge() instanceof Fact.Given<Integer>(Integer edge))) {
      return new Found(between, Optional.empty(), Optional.empty());
    }
    if (edge < 1 || edge > between.size()) {
      return problem(
          new BuildingProblem(
              path.then("edge"),
              "edge " + edge + " between " + pair(place) + " is not there",
              between.size() == 1 ? "edge 1, the only one" : "an edge from 1 to " + between.size(),
              choices(place, between)));
    }
    return new Found(List.of(between.get(edge - 1)), Optional.empty(), Optional.empty());
  }

  /** The walls to choose from, in words. */
  String choices(EdgeSelector place, List<WallSegment> between) {
    List<String> choices = new ArrayList<>();
    for (int i = 0; i < between.size() && i < 6; i++) {
      WallSegment wall = between.get(i);
      choices.add(
          "edge: "
              + (i + 1)
              + " from "
              + texts.place(wall.startFrom(place.room()))
              + " to "
              + texts.place(wall.endFrom(place.room())));
    }
    return (between.size() > choices.size() ? "choose among others " : "choose ")
        + String.join(", ", choices);
  }

  /** The two sides, in words. */
  static String pair(EdgeSelector place) {
    return place.room() + " and " + place.beyond();
  }

  private BuildingProblem elsewhere(String name, PlanPath path) {
    return plan.findFloorOfRoom(name)
        .map(other ->
            new BuildingProblem(
                path.then("between"),
                name + " is on floor " + other.name() + ", not on " + floor.name(),
                "two rooms of one floor, or a room and outside",
                "name a room of " + floor.name() + "; write ways between floors under stairs:"))
        .orElseGet(() ->
            new BuildingProblem(
                path.then("between"),
                "there is no room " + name,
                "two rooms of " + floor.name() + ", or a room and outside",
                "correct the name, or add the room"));
  }

  private BuildingProblem noSharedEdge(EdgeSelector place, PlanPath path) {
    if (place.beyond().equals(EdgeSelector.OUTSIDE)) {
      return new BuildingProblem(
          path.then("between"),
          place.room() + " has no wall to outside",
          "a room with an outer wall",
          "name the room on the other side");
    }
    double apart = distance(place.room(), place.beyond());
    return new BuildingProblem(
        path.then("between"),
        pair(place) + " share no wall; they are " + texts.length(apart) + " apart",
        "rooms with edges within the snap distance of " + texts.length(floor.snapMetres()),
        apart <= floor.snapMetres()
            ? "they meet in a corner only: name a room that lies along the wall"
            : "draw their shared edge with the same corners, or name the room between them");
  }

  private List<WallSegment> between(EdgeSelector place) {
    if (place.room().equals(place.beyond())) {
      return List.of();
    }
    return walls.getOrDefault(Set.of(place.room(), place.beyond()), List.of()).stream()
        .sorted(Comparator.comparingInt(wall -> wall.edgeFrom(place.room())))
        .toList();
  }

  private double distance(String room, String beyond) {
    List<Point> one = Objects.requireNonNull(drawn.get(room)).outline();
    List<Point> other = Objects.requireNonNull(drawn.get(beyond)).outline();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < one.size(); i++) {
      for (int j = 0; j < other.size(); j++) {
        least =
            Math.min(
                least,
                Polygons.distance(
                    one.get(i),
                    one.get((i + 1) % one.size()),
                    other.get(j),
                    other.get((j + 1) % other.size())));
      }
    }
    return least;
  }

  private static Found problem(BuildingProblem problem) {
    return new Found(List.of(), Optional.of(problem), Optional.empty());
  }
}
