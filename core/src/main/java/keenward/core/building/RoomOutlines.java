package keenward.core.building;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.building.plane.Polygons;
import keenward.core.plan.Floor;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Point;
import keenward.core.plan.Room;

/** The rooms of a floor whose outlines are sound, on common nodes. */
final class RoomOutlines {

  private static final double FARTHEST_METRES = 100_000;
  private static final int MOST_OVERLAPS_OF_A_ROOM = 3;

  private final Floor floor;
  private final List<BuildingProblem> problems;
  private final Texts texts;
  private final List<Room> rooms = new ArrayList<>();
  private Noding noding = Noding.of(List.of(), 1);

  private RoomOutlines(Floor floor, List<BuildingProblem> problems) {
    this.floor = floor;
    this.problems = problems;
    texts = new Texts(floor.unit());
  }

  static RoomOutlines of(Floor floor, List<BuildingProblem> problems) {
    RoomOutlines outlines = new RoomOutlines(floor, problems);
    for (Room room : floor.rooms()) {
      if (!room.outline().isEmpty() && outlines.isSound(room)) {
        outlines.rooms.add(room);
      }
    }
    outlines.joinRooms();
    outlines.findShortEdges();
    outlines.findOverlaps();
    return outlines;
  }

  List<Room> rooms() {
    return rooms;
  }

  List<RoomGeometry> geometries() {
    List<RoomGeometry> geometries = new ArrayList<>();
    for (int i = 0; i < rooms.size(); i++) {
      List<Point> points = noding.points(i);
      geometries.add(
          new RoomGeometry(
              rooms.get(i), points, Math.abs(Polygons.signedArea(points)), LabelPoint.of(points)));
    }
    return geometries;
  }

  Noding noding() {
    return noding;
  }

  /**
   * Corners closer than this are one; never quite nothing, so that written coordinates may differ
   * by rounding.
   */
  private double snap() {
    return Math.max(floor.snapMetres(), 1e-9);
  }

  private boolean isSound(Room room) {
    List<Point> outline = room.outline();
    for (int i = 0; i < outline.size(); i++) {
      if (!isInReach(outline.get(i))) {
        problems.add(
            new BuildingProblem(
                path(room).then(i),
                "corner " + (i + 1) + " of " + room.name() + " lies off any site",
                "coordinates within 100 km of the floor's origin",
                "measure from a corner of the building"));
        return false;
      }
    }
    if (outline.size() < 3) {
      problems.add(
          new BuildingProblem(
              path(room),
              room.name() + " has " + outline.size() + " corners",
              "at least 3 corners",
              "go round the room, a corner after the other"));
      return false;
    }
    // The outline alone first, so that a fault in one room does not pull its neighbours about.
    Noding alone = Noding.of(List.of(outline), 1e-9);
    return SelfCrossing.find(alone, 0)
        .map(place -> {
          problems.add(crossing(room, place, ""));
          return false;
        })
        .orElse(true);
  }

  private static boolean isInReach(Point point) {
    return Math.abs(point.xMetres()) <= FARTHEST_METRES
        && Math.abs(point.yMetres()) <= FARTHEST_METRES;
  }

  /**
   * Brings the outlines onto common nodes; a room that does not survive the joining is left out.
   */
  private void joinRooms() {
    List<Room> unsound = new ArrayList<>();
    do {
      rooms.removeAll(unsound);
      unsound.clear();
      noding = Noding.of(rooms.stream().map(Room::outline).toList(), snap());
      for (int i = 0; i < rooms.size(); i++) {
        Optional<Point> place = SelfCrossing.find(noding, i);
        if (place.isPresent()) {
          String joined = " when corners within " + texts.length(snap()) + " are joined";
          problems.add(crossing(rooms.get(i), place.get(), joined));
          unsound.add(rooms.get(i));
        }
      }
    } while (!unsound.isEmpty());
  }

  private void findShortEdges() {
    for (int i = 0; i < rooms.size(); i++) {
      Room room = rooms.get(i);
      int[] corners = noding.corners(i);
      for (int j = 0; j < corners.length; j++) {
        int next = (j + 1) % corners.length;
        if (corners[j] == corners[next]) {
          double apart = room.outline().get(j).distanceMetres(room.outline().get(next));
          problems.add(
              new BuildingProblem(
                  path(room).then(next),
                  "corners "
                      + (j + 1)
                      + " and "
                      + (next + 1)
                      + " of "
                      + room.name()
                      + " are "
                      + texts.length(apart)
                      + " apart",
                  "corners more than the snap distance of " + texts.length(snap()) + " apart",
                  "leave one of them out, or give the floor a smaller snap:"));
        }
      }
    }
  }

  private void findOverlaps() {
    RoomOverlap overlap = new RoomOverlap(noding, rooms.size());
    for (int later = 1; later < rooms.size(); later++) {
      int found = 0;
      for (int earlier = 0; earlier < later && found < MOST_OVERLAPS_OF_A_ROOM; earlier++) {
        Optional<Point> place = overlap.find(earlier, later);
        if (place.isPresent()) {
          found++;
          String one = rooms.get(earlier).name();
          String other = rooms.get(later).name();
          problems.add(
              new BuildingProblem(
                  path(rooms.get(later)),
                  other + " overlaps " + one + " near " + texts.place(place.get()),
                  "rooms that share walls but no floor",
                  "move the shared corners together; round a room inside another, let the outer outline go in, round it and back"));
        }
      }
    }
  }

  private BuildingProblem crossing(Room room, Point place, String when) {
    return new BuildingProblem(
        path(room),
        "the outline of "
            + room.name()
            + " crosses itself or turns back on itself near "
            + texts.place(place)
            + when,
        "corners in order round the room",
        "put the corners in the order in which you would walk past them");
  }

  private PlanPath path(Room room) {
    return PlanPath.of("floors", floor.name(), "rooms", room.name(), "outline");
  }
}
