package keenward.drawing.floor;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import keenward.core.building.walking.Gait;
import keenward.core.building.walking.SiteWalk;
import keenward.core.building.walking.WalkingRoute.Leg;
import keenward.core.plan.Point;

/**
 * The part of a walk that lies on one floor.
 *
 * @param number number of the walk
 * @param walk the walk
 * @param level the part
 * @param ends whether the walk ends on this floor
 */
record FloorWalk(int number, SiteWalk walk, Leg.Level level, boolean ends) {

  /** The parts of walks on a floor; one that goes back over a line drawn already is left out. */
  static List<FloorWalk> of(List<SiteWalk> walks, String floor) {
    List<FloorWalk> parts = new ArrayList<>();
    Set<List<Point>> drawn = new HashSet<>();
    for (int i = 0; i < walks.size(); i++) {
      List<Leg> legs = walks.get(i).time().route().legs();
      for (Leg leg : legs) {
        if (leg instanceof Leg.Level level
            && level.floor().equals(floor)
            && !drawn.contains(level.points().reversed())
            && drawn.add(level.points())) {
          parts.add(new FloorWalk(i + 1, walks.get(i), level, leg == legs.getLast()));
        }
      }
    }
    return parts;
  }

  /** Its number and how long nearly all such people need for all of it. */
  String label() {
    return number + ": " + walk.wholeSeconds(Gait.Share.NEARLY_ALL) + " s";
  }

  /** What tells its chip from others. */
  String owner() {
    return "walk " + number;
  }
}
