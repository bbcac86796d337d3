package keenward.core.building.sound;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import keenward.core.building.Building;
import keenward.core.building.DevicePlace;
import keenward.core.building.FloorGeometry;
import keenward.core.building.OpeningPlace;
import keenward.core.building.RoomGeometry;
import keenward.core.building.WallSegment;
import keenward.core.building.coverage.Eye;
import keenward.core.building.plane.Polygons;
import keenward.core.building.walking.WalkingMap;
import keenward.core.building.walking.WalkingRoute;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.MissingFact;
import keenward.core.plan.Opening;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Point;
import keenward.core.plan.SitePlan;
import keenward.core.plan.SoundOutput;
import keenward.core.quantities.Length;
import keenward.core.quantities.SoundLevel;

/**
 * How loud the sounders of a plan are in its rooms, doors shut. A sound comes straight through
 * walls, or by the doors along the way people walk; of the two the louder counts. It falls with the
 * square of its way; what a room throws back is left out, so that the truth is rather louder.
 */
public final class Audibility {

  /** A head is not nearer to the corner of a room than this. */
  private static final double FROM_CORNER_METRES = 0.5;

  private static final double LEAST_METRES = 0.1;

  private final Building building;
  private final WalkingMap map;
  private final List<Sounder> sounders = new ArrayList<>();
  private final List<MissingFact> notKnown = new ArrayList<>();

  private record Sounder(
      Device device, FloorGeometry floor, String room, Point at, double decibels, double metres) {}

  private Audibility(SitePlan plan, WalkingMap map) {
    this.building = map.building();
    this.map = map;
    plan.devices().forEach(this::add);
  }

  /** The sounders of a plan: inside sounders, and all else whose `sound:` is stated. */
  public static Audibility of(SitePlan plan, WalkingMap map) {
    return new Audibility(plan, map);
  }

  /** Sounders that are left out, and what they lack. */
  public List<MissingFact> notKnown() {
    return List.copyOf(notKnown);
  }

  private void add(Device device) {
    Optional<SoundOutput> sound = device.traits().sound().find();
    if (sound.isEmpty() && device.kind() != DeviceKind.SOUNDER) {
      return;
    }
    Optional<Double> decibels =
        sound.flatMap(each -> each.level().map(SoundLevel::decibels).find());
    Optional<Double> metres = sound.flatMap(each -> each.at().map(Length::metres).find());
    Optional<DevicePlace> place = building.findDevice(device.name());
    Optional<FloorGeometry> floor = place.flatMap(where -> building.findFloor(where.floor()));
    Optional<RoomGeometry> room = place.flatMap(DevicePlace::room).flatMap(building::findRoom);
    Optional<Point> at =
        room.flatMap(in -> place.flatMap(DevicePlace::at).flatMap(where -> Eye.in(in, where)));
    if (decibels.isEmpty() || metres.filter(each -> each > 0).isEmpty()) {
      miss(device, "how loud '" + device.name() + "' is", "sound: { level: 95 dB, at: 3 m }");
    } else if (at.isEmpty()) {
      miss(device, "where '" + device.name() + "' is", "at: [1.9, 2]");
    } else {
      sounders.add(
          new Sounder(
              device,
              floor.orElseThrow(),
              room.orElseThrow().name(),
              at.get(),
              decibels.get(),
              metres.get()));
    }
  }

  private void miss(Device device, String what, String lineToAdd) {
    notKnown.add(
        new MissingFact(
            PlanPath.of("devices", device.name()), "the plan does not say " + what, lineToAdd));
  }

  /** The loudest sounder where the room hears it least; empty where none is heard at all. */
  public Optional<Heard> atQuietest(RoomGeometry room) {
    List<ByDoor> doors = doors(room);
    List<Optional<Heard>> heard =
        listeners(room).stream().map(place -> loudest(room, doors, place)).toList();
    return heard.stream().anyMatch(Optional::isEmpty)
        ? Optional.empty()
        : heard.stream().flatMap(Optional::stream).min(Comparator.comparingDouble(Heard::decibels));
  }

  /** Half a metre out of each corner. */
  private static List<Point> listeners(RoomGeometry room) {
    List<Point> places = new ArrayList<>();
    for (Point corner : room.outline()) {
      double away = corner.distanceMetres(room.centre());
      Point place =
          Polygons.along(corner, room.centre(), away == 0 ? 0 : FROM_CORNER_METRES / away);
      if (room.contains(place)) {
        places.add(place);
      }
    }
    return places.isEmpty() ? List.of(room.centre()) : places;
  }

  private Optional<Heard> loudest(RoomGeometry room, List<ByDoor> doors, Point place) {
    List<Heard> heard = new ArrayList<>();
    sounders.forEach(sounder -> straight(sounder, room, place).ifPresent(heard::add));
    doors.forEach(door -> heard.add(door.heardAt(place)));
    return heard.stream().max(Comparator.comparingDouble(Heard::decibels));
  }

  private Optional<Heard> straight(Sounder sounder, RoomGeometry room, Point place) {
    if (sounder.floor().findRoom(room.name()).isEmpty()) {
      return Optional.empty();
    }
    double lost = 0;
    List<String> through = new ArrayList<>();
    for (WallSegment wall : sounder.floor().walls()) {
      boolean isInTheWay =
          wall.height().find().isEmpty()
              && Polygons.cross(sounder.at(), place, wall.start(), wall.end());
      if (!isInTheWay) {
        continue;
      }
      Optional<Opening> opening = openingAt(sounder.floor(), wall, sounder.at(), place);
      Optional<Double> loss =
          opening
              .map(Losses::openingDecibels)
              .or(() -> Losses.wallDecibels(wall.material().find()));
      if (loss.isEmpty()) {
        return Optional.empty();
      }
      lost += loss.get();
      if (opening.filter(Losses::isOpen).isEmpty()) {
        through.add(
            opening
                .map(each -> "'" + each.name() + "'")
                .orElseGet(() -> "a wall of " + wall.material().find().orElseThrow().word()));
      }
    }
    return Optional.of(heard(sounder, sounder.at().distanceMetres(place), lost, through));
  }

  private static Optional<Opening> openingAt(
      FloorGeometry floor, WallSegment wall, Point from, Point to) {
    return floor.openings().stream()
        .filter(place -> place.wall().equals(wall))
        .filter(place -> Polygons.cross(from, to, place.leftJamb(), place.rightJamb()))
        .map(OpeningPlace::opening)
        .findFirst();
  }

  /**
   * A way of sound from a sounder to a door of a room.
   *
   * @param sounder the sounder
   * @param route the way to the door
   * @param door the door
   */
  private record ByDoor(Sounder sounder, WalkingRoute route, OpeningPlace door) {

    Heard heardAt(Point place) {
      List<Opening> passed = new ArrayList<>();
      route.crossings().stream()
          .flatMap(crossing -> crossing.passage().opening().stream())
          .forEach(passed::add);
      passed.add(door.opening());
      return heard(
          sounder,
          route.metres() + door.middle().distanceMetres(place),
          passed.stream().mapToDouble(Losses::openingDecibels).sum(),
          passed.stream()
              .filter(opening -> !Losses.isOpen(opening))
              .map(opening -> "'" + opening.name() + "'")
              .toList());
    }
  }

  /** The ways by which sound comes to the doors of a room from sounders in others. */
  private List<ByDoor> doors(RoomGeometry room) {
    List<ByDoor> ways = new ArrayList<>();
    for (FloorGeometry floor : building.floors()) {
      for (OpeningPlace door : floor.openings()) {
        if (door.opening().isInnerWay() && door.opening().touches(room.name())) {
          sounders.stream()
              .filter(sounder -> !sounder.room().equals(room.name()))
              .forEach(sounder ->
                  route(sounder, door.opening())
                      .ifPresent(route -> ways.add(new ByDoor(sounder, route, door))));
        }
      }
    }
    return ways;
  }

  private Optional<WalkingRoute> route(Sounder sounder, Opening door) {
    return map.place(sounder.device())
        .flatMap(start -> map.place(door).flatMap(end -> map.search(start, end).find()));
  }

  private static Heard heard(
      Sounder sounder, double metres, double lostDecibels, List<String> through) {
    double decibels =
        Losses.levelAt(sounder.decibels(), sounder.metres(), Math.max(LEAST_METRES, metres))
            - lostDecibels;
    return new Heard(sounder.device(), decibels, metres, through);
  }
}
