package keenward.core.building;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.plan.Floor;
import keenward.core.plan.Opening;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Room;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Stair;

/**
 * The building of a plan.
 *
 * @param floors its floors, those without a drawing included, in the order of the plan
 * @param devices where the devices are; those without any place are absent
 * @param graph rooms and the passages between them
 * @param problems what of the drawing does not fit together
 * @param notPlaced what the plan says too little about to place it
 */
public record Building(
    List<FloorGeometry> floors,
    List<DevicePlace> devices,
    RoomGraph graph,
    List<BuildingProblem> problems,
    List<NotPlaced> notPlaced) {

  /**
   * The most corners of a plan that are drawn; more is no building but a mistake, and would take
   * long.
   */
  public static final int MOST_CORNERS = 10_000;

  public Building {
    floors = List.copyOf(floors);
    devices = List.copyOf(devices);
    problems = List.copyOf(problems);
    notPlaced = List.copyOf(notPlaced);
  }

  /** Builds what a plan draws. Never throws for what a plan says: see {@link #problems}. */
  public static Building of(SitePlan plan) {
    List<BuildingProblem> problems = new ArrayList<>();
    List<NotPlaced> notPlaced = new ArrayList<>();
    List<FloorGeometry> floors = new ArrayList<>();
    int corners = 0;
    for (Floor floor : plan.floors()) {
      for (Room room : floor.rooms()) {
        corners += room.outline().size();
      }
      floors.add(
          corners <= MOST_CORNERS
              ? build(plan, floor, problems, notPlaced)
              : tooLarge(floor, problems));
    }
    List<DevicePlace> devices = new DevicePlacer(plan, floors, problems, notPlaced).place();
    return new Building(floors, devices, graph(floors), problems, notPlaced);
  }

  /** The floor with this name. */
  public Optional<FloorGeometry> findFloor(String name) {
    return floors.stream().filter(floor -> floor.name().equals(name)).findFirst();
  }

  /** The drawn room with this name, on whatever floor. */
  public Optional<RoomGeometry> findRoom(String name) {
    return floors.stream().flatMap(floor -> floor.findRoom(name).stream()).findFirst();
  }

  /** Where a device is, when the plan says anything about it. */
  public Optional<DevicePlace> findDevice(String name) {
    return devices.stream().filter(place -> place.device().name().equals(name)).findFirst();
  }

  /** Whether anything is drawn. */
  public boolean isDrawn() {
    return floors.stream().anyMatch(floor -> !floor.rooms().isEmpty());
  }

  private static FloorGeometry build(
      SitePlan plan, Floor floor, List<BuildingProblem> problems, List<NotPlaced> notPlaced) {
    RoomOutlines outlines = RoomOutlines.of(floor, problems);
    List<RoomGeometry> rooms = outlines.geometries();
    List<WallSegment> walls = WallBuilder.walls(outlines, floor.name());
    WallFinder bare = new WallFinder(plan, floor, rooms, walls);
    List<WallSegment> finished = WallFinishes.apply(floor, bare, walls, problems, notPlaced);
    WallFinder finder = new WallFinder(plan, floor, rooms, finished);
    List<OpeningPlace> openings = new OpeningPlacer(floor, finder, problems, notPlaced).place();
    return new FloorGeometry(floor, rooms, finished, openings);
  }

  private static FloorGeometry tooLarge(Floor floor, List<BuildingProblem> problems) {
    problems.add(
        new BuildingProblem(
            PlanPath.of("floors", floor.name()),
            "the outlines have more than " + MOST_CORNERS + " corners up to this floor",
            "a plan of at most " + MOST_CORNERS + " corners",
            "draw curves with fewer corners"));
    return new FloorGeometry(floor, List.of(), List.of(), List.of());
  }

  private static RoomGraph graph(List<FloorGeometry> floors) {
    List<String> rooms = new ArrayList<>();
    List<Passage> passages = new ArrayList<>();
    for (FloorGeometry geometry : floors) {
      geometry.floor().rooms().forEach(room -> rooms.add(room.name()));
      for (Opening opening : geometry.floor().openings()) {
        passages.add(
            new Passage(
                opening.name(),
                opening.place().room(),
                opening.place().beyond(),
                Optional.of(opening),
                geometry
                    .findOpening(opening.name())
                    .map(place -> new Passage.Jambs(place.leftJamb(), place.rightJamb()))));
      }
      for (Stair stair : geometry.floor().stairs()) {
        passages.add(
            new Passage(
                stair.name(), stair.room(), stair.to(), Optional.empty(), Optional.empty()));
      }
    }
    return new RoomGraph(rooms, passages);
  }
}
