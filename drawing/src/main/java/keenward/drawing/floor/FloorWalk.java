package keenward.drawing.floor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import keenward.core.building.walking.Gait;
import keenward.core.building.walking.SiteWalk;
import keenward.core.building.walking.WalkingRoute.Leg;
import keenward.core.plan.Point;

/**
 * The part of walks that lies on one floor along one line, there or back.
 *
 * @param numbers numbers of the walks
 * @param walks the walks; the line is drawn as for the first
 * @param level the part of the first
 * @param ends whether the first walk ends on this floor
 */
record FloorWalk(List<Integer> numbers, List<SiteWalk> walks, Leg.Level level, boolean ends) {

  FloorWalk {
    numbers = List.copyOf(numbers);
    walks = List.copyOf(walks);
  }

  /** The parts of walks on a floor, each line once. */
  static List<FloorWalk> of(List<SiteWalk> walks, String floor) {
    Map<List<Point>, FloorWalk> byLine = new LinkedHashMap<>();
    for (int i = 0; i < walks.size(); i++) {
      List<Leg> legs = walks.get(i).time().route().legs();
      for (Leg leg : legs) {
        if (leg instanceof Leg.Level level && level.floor().equals(floor)) {
          List<Point> back = level.points().reversed();
          FloorWalk part =
              new FloorWalk(
                  List.of(i + 1), List.of(walks.get(i)), level, leg.equals(legs.getLast()));
          byLine.merge(byLine.containsKey(back) ? back : level.points(), part, FloorWalk::and);
        }
      }
    }
    return List.copyOf(byLine.values());
  }

  private FloorWalk and(FloorWalk other) {
    List<Integer> allNumbers = new ArrayList<>(numbers);
    allNumbers.addAll(other.numbers);
    List<SiteWalk> allWalks = new ArrayList<>(walks);
    allWalks.addAll(other.walks);
    return new FloorWalk(allNumbers, allWalks, level, ends);
  }

  SiteWalk.Kind kind() {
    return walks.getFirst().kind();
  }

  /** The walks in words, for those who point at the line. */
  String title() {
    return walks.stream()
        .map(walk -> walk.title() + ", to " + walk.to())
        .collect(Collectors.joining("; "));
  }

  /** Numbers, and how long nearly all such people need for all of the longest walk. */
  String label() {
    int seconds =
        walks.stream()
            .mapToInt(walk -> walk.wholeSeconds(Gait.Share.NEARLY_ALL))
            .max()
            .orElseThrow();
    return numbered() + (walks.size() == 1 ? ": " : ": up to ") + seconds + " s";
  }

  /** What tells its chip from others. */
  String owner() {
    return "walk " + numbered();
  }

  String numbered() {
    return numbers.stream().map(String::valueOf).collect(Collectors.joining(", "));
  }
}
