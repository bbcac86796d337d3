package keenward.core.building.walking;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import keenward.core.building.Building;
import keenward.core.building.FloorGeometry;
import keenward.core.building.OpeningPlace;
import keenward.core.building.Passage;
import keenward.core.building.RoomGeometry;
import keenward.core.building.Route;
import keenward.core.building.plane.Polygons;
import keenward.core.plan.EdgeSelector;
import keenward.core.plan.Point;

/**
 * A shortest walk, as drawn.
 *
 * @param from where it begins
 * @param to where it ends
 * @param legs its parts in order
 * @param crossings openings and stairs passed, in order, those at which it begins or ends excluded
 * @param rooms rooms walked through, in order: one more than crossings
 */
public record WalkingRoute(
    Place from, Place to, List<Leg> legs, List<Crossing> crossings, List<String> rooms) {

  /** What lies nearer to an end belongs to the end. */
  private static final double END_METRES = 1e-6;

  /** A part of a walk. */
  public sealed interface Leg {

    /** How far it goes, measured level. */
    double metres();

    /** The same part walked back. */
    Leg back();

    /**
     * On one floor.
     *
     * @param floor name of the floor
     * @param points where it turns, ends included
     */
    record Level(String floor, List<Point> points) implements Leg {
      public Level {
        points = List.copyOf(points);
      }

      @Override
      public double metres() {
        double metres = 0;
        for (int i = 1; i < points.size(); i++) {
          metres += points.get(i - 1).distanceMetres(points.get(i));
        }
        return metres;
      }

      @Override
      public Leg back() {
        return new Level(floor, points.reversed());
      }

      /** The place so far along it. */
      public Point at(double metres) {
        double left = metres;
        for (int i = 1; i < points.size(); i++) {
          double length = points.get(i - 1).distanceMetres(points.get(i));
          if (left <= length && length > 0) {
            return Polygons.along(points.get(i - 1), points.get(i), left / length);
          }
          left -= length;
        }
        return points.getLast();
      }
    }

    /**
     * On a stair.
     *
     * @param stair the stair
     * @param metres its run
     */
    record Flight(Passage stair, double metres) implements Leg {
      @Override
      public Leg back() {
        return this;
      }
    }
  }

  /**
   * An opening or stair on the way.
   *
   * @param metres how far along the walk it is reached
   * @param passage the opening or stair
   */
  public record Crossing(double metres, Passage passage) {}

  public WalkingRoute {
    legs = List.copyOf(legs);
    crossings = List.copyOf(crossings);
    rooms = List.copyOf(rooms);
  }

  static WalkingRoute of(Building building, Place from, Place to, List<Leg> legs) {
    List<Crossing> crossings = new ArrayList<>();
    double walked = 0;
    for (Leg leg : legs) {
      switch (leg) {
        case Leg.Level level -> crossings.addAll(crossings(building, level, walked));
        // Half way, so that the walk back passes it at the same place.
        case Leg.Flight(Passage stair, double metres) ->
            crossings.add(new Crossing(walked + metres / 2, stair));
      }
      walked += leg.metres();
    }
    return new WalkingRoute(from, to, legs, crossings, rooms(building, legs, crossings));
  }

  private static List<Crossing> crossings(Building building, Leg.Level level, double walked) {
    List<Crossing> crossings = new ArrayList<>();
    Optional<FloorGeometry> floor = building.findFloor(level.floor());
    double here = walked;
    for (int i = 1; i < level.points().size(); i++) {
      Point from = level.points().get(i - 1);
      Point to = level.points().get(i);
      for (OpeningPlace place : floor.map(FloorGeometry::openings).orElse(List.of())) {
        double before = here;
        crossing(place, from, to)
            .filter(metres -> before + metres > walked + END_METRES)
            .filter(metres -> before + metres < walked + level.metres() - END_METRES)
            .flatMap(metres ->
                passage(building, place.opening().name())
                    .map(passage -> new Crossing(before + metres, passage)))
            .ifPresent(crossings::add);
      }
      here += from.distanceMetres(to);
    }
    crossings.sort(Comparator.comparingDouble(Crossing::metres));
    return crossings;
  }

  /**
   * How far along a straight piece an opening is crossed. A way often turns in the very line of an
   * opening, at its jamb; a place on that line counts with the left side, so that one of the two
   * pieces crosses it.
   */
  private static Optional<Double> crossing(OpeningPlace place, Point from, Point to) {
    double one = Polygons.turn(place.leftJamb(), place.rightJamb(), from);
    double other = Polygons.turn(place.leftJamb(), place.rightJamb(), to);
    if (one < 0 == other < 0) {
      return Optional.empty();
    }
    Point at = Polygons.along(from, to, one / (one - other));
    double part = Polygons.parameter(place.leftJamb(), place.rightJamb(), at);
    return part >= 0 && part <= 1 ? Optional.of(from.distanceMetres(at)) : Optional.empty();
  }

  private static Optional<Passage> passage(Building building, String name) {
    return building.graph().passages().stream()
        .filter(passage -> passage.name().equals(name))
        .findFirst();
  }

  private static List<String> rooms(Building building, List<Leg> legs, List<Crossing> crossings) {
    double first = crossings.isEmpty() ? Double.POSITIVE_INFINITY : crossings.getFirst().metres();
    String room = firstRoom(building, legs.getFirst(), first);
    List<String> rooms = new ArrayList<>(List.of(room));
    for (Crossing crossing : crossings) {
      room = crossing.passage().otherEnd(room);
      rooms.add(room);
    }
    return rooms;
  }

  /** The room half way to the first crossing. */
  private static String firstRoom(Building building, Leg leg, double firstCrossing) {
    return switch (leg) {
      case Leg.Flight(Passage stair, double ignored) -> stair.room();
      case Leg.Level level ->
          building
              .findFloor(level.floor())
              .flatMap(
                  floor -> floor.findRoomAt(level.at(Math.min(firstCrossing, level.metres()) / 2)))
              .map(RoomGeometry::name)
              .orElse(EdgeSelector.OUTSIDE);
    };
  }

  /** Whether any of it is on a floor. */
  public boolean isOn(String floor) {
    return legs.stream()
        .anyMatch(leg -> leg instanceof Leg.Level level && level.floor().equals(floor));
  }

  /** How far it goes on floors. */
  public double levelMetres() {
    return legs.stream().filter(Leg.Level.class::isInstance).mapToDouble(Leg::metres).sum();
  }

  /** How far it goes on stairs, measured level. */
  public double stairMetres() {
    return legs.stream().filter(Leg.Flight.class::isInstance).mapToDouble(Leg::metres).sum();
  }

  /** How far it goes, stairs measured level. */
  public double metres() {
    return levelMetres() + stairMetres();
  }

  /** How far it goes, and how much of that is stairs. */
  public String metresInWords() {
    String all = inWords(metres());
    return stairMetres() == 0 ? all : all + " (" + inWords(stairMetres()) + " of it on stairs)";
  }

  private static String inWords(double metres) {
    return BigDecimal.valueOf(metres).setScale(1, RoundingMode.HALF_UP).toPlainString() + " m";
  }

  /** How long it takes. */
  public double seconds(Gait gait) {
    return seconds(gait, metres());
  }

  /** How long it takes to come so far. */
  public double seconds(Gait gait, double metres) {
    double left = metres;
    double seconds = 0;
    for (Leg leg : legs) {
      double part = Math.min(left, leg.metres());
      seconds += part / gait.metresPerSecond(leg instanceof Leg.Flight);
      left -= part;
    }
    return seconds;
  }

  /** The same walk from its end to its beginning. */
  public WalkingRoute back() {
    return new WalkingRoute(
        to,
        from,
        legs.reversed().stream().map(Leg::back).toList(),
        crossings.reversed().stream()
            .map(each -> new Crossing(metres() - each.metres(), each.passage()))
            .toList(),
        rooms.reversed());
  }

  /** The same by rooms and passages. */
  public Route byRooms() {
    return new Route(rooms, crossings.stream().map(Crossing::passage).toList());
  }
}
