package keenward.core.building;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import keenward.core.plan.Fact;
import keenward.core.plan.Floor;
import keenward.core.plan.Material;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Wall;
import keenward.core.quantities.Length;

/**
 * Gives walls their material and height: what the plan says of the wall itself, or of the floor.
 */
final class WallFinishes {

  private WallFinishes() {}

  static List<WallSegment> apply(
      Floor floor,
      WallFinder finder,
      List<WallSegment> walls,
      List<BuildingProblem> problems,
      List<NotPlaced> notPlaced) {
    List<WallSegment> finished = new ArrayList<>();
    for (WallSegment wall : walls) {
      finished.add(with(wall, floor.wallMaterial(), Fact.missing()));
    }
    Map<WallSegment, Integer> numbers = new HashMap<>();
    for (int i = 0; i < walls.size(); i++) {
      numbers.put(walls.get(i), i);
    }
    Set<Integer> stated = new HashSet<>();
    for (int i = 0; i < floor.walls().size(); i++) {
      Wall wall = floor.walls().get(i);
      PlanPath path = PlanPath.of("floors", floor.name(), "walls", i);
      WallFinder.Found found = finder.find(wall.place(), path);
      found.problem().ifPresent(problems::add);
      found
          .undrawn()
          .ifPresent(room ->
              notPlaced.add(
                  new NotPlaced(
                      path,
                      "the wall between " + WallFinder.pair(wall.place()),
                      "outline: for " + room)));
      boolean repeated = false;
      for (WallSegment segment : found.walls()) {
        int index = Objects.requireNonNull(numbers.get(segment));
        repeated |= !stated.add(index);
        finished.set(index, with(segment, wall.material().or(floor.wallMaterial()), wall.height()));
      }
      if (repeated) {
        problems.add(
            new BuildingProblem(
                path,
                "a wall between " + WallFinder.pair(wall.place()) + " is described twice",
                "each wall once",
                "keep one of the two lines, or tell the walls apart with edge:"));
      }
    }
    return finished;
  }

  private static WallSegment with(WallSegment wall, Fact<Material> material, Fact<Length> height) {
    return new WallSegment(
        wall.floor(),
        wall.room(),
        wall.beyond(),
        wall.start(),
        wall.end(),
        wall.edge(),
        wall.beyondEdge(),
        wall.beyondRunsBack(),
        wall.roomOnLeft(),
        material,
        height);
  }
}
