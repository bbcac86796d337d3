package keenward.core.building;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import keenward.core.building.plane.Polygons;
import keenward.core.plan.EdgeSelector;
import keenward.core.plan.Fact;
import keenward.core.plan.Point;

/**
 * Makes walls from noded outlines: where two rooms walk the same edge there is an inner wall,
 * elsewhere an outer one. Edges that go straight on with the same neighbour make one wall.
 */
final class WallBuilder {

  /** Two edges that turn by no more than this go straight on. */
  private static final double STRAIGHT_RADIANS = Math.toRadians(0.1);

  private static final int OUTSIDE = -1;
  private static final int NONE = -2;

  private final RoomOutlines outlines;
  private final Noding noding;
  private final String floor;
  private final Map<Long, Integer> roomOnLeft = new HashMap<>();
  private final List<Boolean> runsLeft = new ArrayList<>();

  /** A straight run of edges of one outline with the same neighbour. */
  private record Run(int room, int neighbour, int from, int to, int number) {}

  private WallBuilder(RoomOutlines outlines, String floor) {
    this.outlines = outlines;
    this.noding = outlines.noding();
    this.floor = floor;
    for (int room = 0; room < outlines.rooms().size(); room++) {
      runsLeft.add(Polygons.signedArea(noding.points(room)) > 0);
    }
  }

  static List<WallSegment> walls(RoomOutlines outlines, String floor) {
    WallBuilder builder = new WallBuilder(outlines, floor);
    builder.claimEdges();
    return builder.build();
  }

  private boolean runsLeft(int room) {
    return runsLeft.get(room);
  }

  private void claimEdges() {
    for (int room = 0; room < outlines.rooms().size(); room++) {
      int[] cycle = noding.cycle(room);
      boolean left = runsLeft(room);
      for (int i = 0; i < cycle.length; i++) {
        int a = cycle[i];
        int b = cycle[(i + 1) % cycle.length];
        // Rooms that overlap claim an edge twice; the first keeps it, and the overlap is reported.
        roomOnLeft.putIfAbsent(left ? key(a, b) : key(b, a), room);
      }
    }
  }

  private static long key(int from, int to) {
    return (long) from << 32 | to;
  }

  private List<WallSegment> build() {
    List<Run> runs = new ArrayList<>();
    Map<List<Integer>, Run> ofLaterRoom = new HashMap<>();
    for (int room = 0; room < outlines.rooms().size(); room++) {
      for (Run run : runsOf(room)) {
        if (run.neighbour() == OUTSIDE || run.neighbour() > room) {
          runs.add(run);
        } else {
          ofLaterRoom.put(wallKey(run.neighbour(), room, run), run);
        }
      }
    }
    List<WallSegment> walls = new ArrayList<>();
    for (Run run : runs) {
      Run other = ofLaterRoom.get(wallKey(run.room(), run.neighbour(), run));
      walls.add(
          new WallSegment(
              floor,
              name(run.room()),
              run.neighbour() == OUTSIDE ? EdgeSelector.OUTSIDE : name(run.neighbour()),
              noding.node(run.from()),
              noding.node(run.to()),
              run.number(),
              other == null ? 0 : other.number(),
              other != null && other.from() == run.to(),
              runsLeft(run.room()),
              Fact.missing(),
              Fact.missing()));
    }
    return walls;
  }

  private static List<Integer> wallKey(int room, int neighbour, Run run) {
    return List.of(room, neighbour, Math.min(run.from(), run.to()), Math.max(run.from(), run.to()));
  }

  private String name(int room) {
    return outlines.rooms().get(room).name();
  }

  /** The runs of an outline; the first holds the edge that leaves the first corner. */
  private List<Run> runsOf(int room) {
    int[] cycle = noding.cycle(room);
    int count = cycle.length;
    int[] neighbours = new int[count];
    for (int i = 0; i < count; i++) {
      neighbours[i] = neighbour(room, cycle[i], cycle[(i + 1) % count]);
    }
    int first = 0;
    while (first > -count && !breaksAt(cycle, neighbours, first)) {
      first--;
    }
    List<Run> runs = new ArrayList<>();
    Map<Integer, Integer> numbers = new HashMap<>();
    int start = first;
    for (int i = first + 1; i <= first + count; i++) {
      if (breaksAt(cycle, neighbours, i)) {
        int neighbour = neighbours[Math.floorMod(start, count)];
        if (neighbour != NONE) {
          int from = cycle[Math.floorMod(start, count)];
          int to = cycle[Math.floorMod(i, count)];
          runs.add(new Run(room, neighbour, from, to, numbers.merge(neighbour, 1, Integer::sum)));
        }
        start = i;
      }
    }
    return runs;
  }

  private int neighbour(int room, int from, int to) {
    long back = runsLeft(room) ? key(to, from) : key(from, to);
    Integer found = roomOnLeft.get(back);
    if (found == null) {
      return OUTSIDE;
    }
    // An outline that walks an edge back has itself on both sides: no wall.
    return found == room ? NONE : found;
  }

  /** Whether a wall ends at the node before this edge. */
  private boolean breaksAt(int[] cycle, int[] neighbours, int index) {
    int count = cycle.length;
    int here = Math.floorMod(index, count);
    int before = Math.floorMod(index - 1, count);
    if (neighbours[here] != neighbours[before]) {
      return true;
    }
    Point a = noding.node(cycle[before]);
    Point b = noding.node(cycle[here]);
    Point c = noding.node(cycle[(here + 1) % count]);
    double along =
        (b.xMetres() - a.xMetres()) * (c.xMetres() - b.xMetres())
            + (b.yMetres() - a.yMetres()) * (c.yMetres() - b.yMetres());
    return Math.abs(Math.atan2(Polygons.turn(a, b, c), along)) > STRAIGHT_RADIANS;
  }
}
