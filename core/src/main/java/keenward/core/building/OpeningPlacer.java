package keenward.core.building;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import keenward.core.building.plane.Polygons;
import keenward.core.plan.EdgeSelector;
import keenward.core.plan.Fact;
import keenward.core.plan.Floor;
import keenward.core.plan.Opening;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Point;
import keenward.core.quantities.Length;

/** Puts the openings of a floor on their walls. */
final class OpeningPlacer {

  /** Openings overlap when they share more of the wall than this. */
  private static final double SHARED_METRES = 0.001;

  private final Floor floor;
  private final Texts texts;
  private final WallFinder finder;
  private final List<BuildingProblem> problems;
  private final List<NotPlaced> notPlaced;
  private final List<OpeningPlace> places = new ArrayList<>();

  OpeningPlacer(
      Floor floor, WallFinder finder, List<BuildingProblem> problems, List<NotPlaced> notPlaced) {
    this.floor = floor;
    texts = new Texts(floor.unit());
    this.finder = finder;
    this.problems = problems;
    this.notPlaced = notPlaced;
  }

  List<OpeningPlace> place() {
    for (Opening opening : floor.openings()) {
      place(opening);
    }
    findOverlaps();
    return places;
  }

  private PlanPath path(Opening opening) {
    return PlanPath.of("floors", floor.name(), "openings", opening.name());
  }

  private void place(Opening opening) {
    EdgeSelector selector = opening.place();
    boolean stated = opening.at().isGiven() && opening.width().isGiven();
    WallFinder.Found found = finder.find(selector, path(opening));
    if (found.problem().isPresent()) {
      problems.add(found.problem().get());
      return;
    }
    if (found.undrawn().isPresent()) {
      notPlaced.add(
          new NotPlaced(path(opening), opening.name(), "outline: for " + found.undrawn().get()));
      return;
    }
    if (found.walls().size() > 1 && stated) {
      problems.add(
          new BuildingProblem(
              path(opening),
              WallFinder.pair(selector)
                  + " share "
                  + found.walls().size()
                  + " walls, and the plan does not say in which one "
                  + opening.name()
                  + " is",
              "edge: with a number from 1 to " + found.walls().size(),
              finder.choices(selector, found.walls())));
      return;
    }
    if (opening.at() instanceof Fact.Given<Length>(Length at)
        && opening.width() instanceof Fact.Given<Length>(Length width)) {
      place(opening, found.walls().getFirst(), at.metres(), width.metres());
      return;
    }
    List<String> lines = new ArrayList<>();
    if (found.walls().size() > 1) {
      lines.add("edge: (" + finder.choices(selector, found.walls()) + ")");
    }
    if (!opening.at().isGiven()) {
      lines.add("at: with the distance along the wall, such as 1.2 m");
    }
    if (!opening.width().isGiven()) {
      lines.add("width: such as 0.9 m");
    }
    notPlaced.add(new NotPlaced(path(opening), opening.name(), String.join(", ", lines)));
  }

  private void place(Opening opening, WallSegment wall, double at, double width) {
    String room = opening.place().room();
    double length = wall.lengthMetres();
    if (!(width > 0)) {
      problems.add(
          new BuildingProblem(
              path(opening).then("width"),
              opening.name() + " has no width",
              "a width above 0 m",
              "write its clear width, such as 0.9 m"));
      return;
    }
    // Corners are known to within the snap distance, so that much past the end is no fault.
    if (!(at >= 0 && at + width <= length + floor.snapMetres())) {
      problems.add(
          new BuildingProblem(
              path(opening).then("at"),
              opening.name()
                  + " ends "
                  + texts.length(at + width)
                  + " along a wall of "
                  + texts.length(length),
              "at: of at most "
                  + texts.length(Math.max(0, length - width))
                  + " for a width of "
                  + texts.length(width),
              "measure from "
                  + texts.place(wall.startFrom(room))
                  + " towards "
                  + texts.place(wall.endFrom(room))
                  + ", or name another edge:"));
      return;
    }
    Point near = Polygons.along(wall.startFrom(room), wall.endFrom(room), at / length);
    Point far = Polygons.along(wall.startFrom(room), wall.endFrom(room), (at + width) / length);
    // Facing a wall with the room to the left of its run, its far end is on the left hand.
    boolean farIsLeft = wall.isOnLeft(room) == wall.startFrom(room).equals(wall.start());
    places.add(new OpeningPlace(opening, wall, farIsLeft ? far : near, farIsLeft ? near : far));
  }

  private record Interval(Opening opening, double from, double to) {}

  private void findOverlaps() {
    Map<WallSegment, List<Interval>> byWall = new LinkedHashMap<>();
    for (OpeningPlace place : places) {
      double left = place.wall().start().distanceMetres(place.leftJamb());
      double right = place.wall().start().distanceMetres(place.rightJamb());
      byWall
          .computeIfAbsent(place.wall(), ignored -> new ArrayList<>())
          .add(new Interval(place.opening(), Math.min(left, right), Math.max(left, right)));
    }
    for (List<Interval> intervals : byWall.values()) {
      intervals.sort(Comparator.comparingDouble(Interval::from));
      Interval farthest = intervals.getFirst();
      for (Interval interval : intervals.subList(1, intervals.size())) {
        if (Math.min(farthest.to(), interval.to()) - interval.from() > SHARED_METRES) {
          problems.add(
              new BuildingProblem(
                  path(interval.opening()).then("at"),
                  interval.opening().name()
                      + " overlaps "
                      + farthest.opening().name()
                      + " in the same wall",
                  "openings side by side",
                  "correct at: or width: of one of them"));
        }
        farthest = interval.to() > farthest.to() ? interval : farthest;
      }
    }
  }
}
