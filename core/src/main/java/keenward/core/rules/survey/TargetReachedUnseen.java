package keenward.core.rules.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import keenward.core.building.Building;
import keenward.core.building.DevicePlace;
import keenward.core.building.coverage.BeamLine;
import keenward.core.building.coverage.CoverageMap;
import keenward.core.building.coverage.DetectorView;
import keenward.core.building.walking.Avoided;
import keenward.core.building.walking.Gait;
import keenward.core.building.walking.Place;
import keenward.core.building.walking.WalkingMap;
import keenward.core.building.walking.WalkingRoute;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.Device;
import keenward.core.plan.Floor;
import keenward.core.plan.MissingFact;
import keenward.core.plan.Opening;
import keenward.core.plan.Pace;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Point;
import keenward.core.plan.Room;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.plan.ZoneResponse;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Kinds;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;
import keenward.core.rules.survey.OpeningGuards.Guard;

/** A burglar can come to what they want, and nothing has seen them. */
public final class TargetReachedUnseen implements Rule {

  private static final double BEAM_METRES = 0.02;
  private static final Gait BURGLAR = Gait.of(Pace.BRISK, Gait.Share.HALF);

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.SURVEY, 5, "target-reached-unseen", Severity.WARNING)
          .source(Source.practice())
          .purpose(
              "Looks for a way 0.5 m wide from an opening to outside that nothing watches into a room with `target: yes`,"
                  + " all of it out of sight of what is live when the site is armed away.")
          .consequence(
              "What the burglar came for is in their hands before the alarm goes off, or without it.")
          .limits(
              "Openings that a ladder reaches count, as advice. Inner doors are taken to be unlocked; walls, floors and"
                  + " ceilings hold. A motion detector of which the plan does not say what it sees is taken to see its"
                  + " whole room. Signed exclusions are let pass. Levels are joined only by stairs that have a place.")
          .parameter("width of the way", "0.5", "m")
          .remedy("Watch the opening, or turn or add a detector so that the way is seen.")
          .broken(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store:  { use: store,  outline: [[0, 0], [8, 0], [8, 6], [0, 6]] }
                    Office: { use: office, target: yes, outline: [[8, 0], [12, 0], [12, 6], [8, 6]] }
                  openings:
                    Yard hatch:  { kind: hatch,   between: [Store, outside], edge: 1, at: 5 m, width: 1.2 m, reachable: no }
                    Office way:  { kind: doorway, between: [Store, Office], at: 1 m, width: 1 m }
              types:
                corner motion: { kind: motion, wiring: wired, coverage: { pattern: fan, range: 5 m, angle: 90 deg } }
              devices:
                Store motion:  { type: corner motion, room: Store, at: [0.1, 5.9], bearing: 135 deg }
                Office motion: { type: corner motion, room: Office, at: [11.9, 5.9], bearing: 225 deg }
              zones:
                1: { name: Store,  response: instant, device: Store motion }
                2: { name: Office, response: instant, device: Office motion }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store:  { use: store,  outline: [[0, 0], [8, 0], [8, 6], [0, 6]] }
                    Office: { use: office, target: yes, outline: [[8, 0], [12, 0], [12, 6], [8, 6]] }
                  openings:
                    Yard hatch:  { kind: hatch,   between: [Store, outside], edge: 1, at: 5 m, width: 1.2 m, reachable: no }
                    Office way:  { kind: doorway, between: [Store, Office], at: 1 m, width: 1 m }
              types:
                corner motion: { kind: motion, wiring: wired, coverage: { pattern: fan, range: 12 m, angle: 90 deg } }
              devices:
                Store motion:  { type: corner motion, room: Store, at: [0.1, 5.9], bearing: 135 deg }
                Office motion: { type: corner motion, room: Office, at: [11.9, 5.9], bearing: 225 deg }
              zones:
                1: { name: Store,  response: instant, device: Store motion }
                2: { name: Office, response: instant, device: Office motion }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store:  { use: store,  outline: [[0, 0], [8, 0], [8, 6], [0, 6]] }
                    Office: { use: office, target: yes, outline: [[8, 0], [12, 0], [12, 6], [8, 6]] }
                  openings:
                    Yard hatch:  { kind: hatch,   between: [Store, outside], edge: 1, at: 5 m, width: 1.2 m, reachable: no }
                    Office way:  { kind: doorway, between: [Store, Office], at: 1 m, width: 1 m }
              types:
                corner motion: { kind: motion, wiring: wired, coverage: { pattern: fan, range: 5 m, angle: 90 deg } }
              devices:
                Store motion:  { type: corner motion, room: Store, at: [0.1, 5.9], bearing: 135 deg }
                Office motion: { type: corner motion, room: Office, at: [11.9, 5.9], bearing: 225 deg, coverage: { pattern: fan, range: 12 m, angle: 90 deg } }
              zones:
                1: { name: Store,  response: instant, device: Store motion }
                2: { name: Office, response: instant, device: Office motion }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    SitePlan plan = input.plan();
    List<Room> targets =
        plan.floors().stream()
            .flatMap(floor -> floor.rooms().stream())
            .filter(room -> room.target().orElse(false))
            .toList();
    if (targets.isEmpty()) {
      return;
    }
    OpeningGuards guards = new OpeningGuards(plan, input.building(), input.views());
    WalkingMap map = WalkingMap.of(plan, input.building(), watched(input));
    for (Room target : targets) {
      judge(new Looked(plan, input.building(), guards, map, target), target, report);
    }
  }

  private static void judge(Looked looked, Room target, Report report) {
    Optional<MissingFact> open =
        looked.ways.isEmpty() ? looked.notKnown.stream().findFirst() : looked.maybeWatched();
    if (open.isPresent()) {
      report.notAssessed(
          open.get().place(),
          "whether '" + target.name() + "' can be reached unseen: " + open.get().why(),
          open.get().lineToAdd());
      return;
    }
    report.judged();
    looked.ways.forEach(way -> report(way, target, report));
  }

  /** Areas that detectors see and openings with contacts, of zones that are live when away. */
  private static Avoided watched(CheckInput input) {
    Map<String, DetectorView> viewOf = input.views().byDevice();
    Map<String, List<List<Point>>> areas = new HashMap<>();
    Set<String> openings = new HashSet<>();
    for (Zone zone : input.plan().zones()) {
      if (!isLive(zone)) {
        continue;
      }
      for (ZoneDevice each : zone.devices()) {
        if (each instanceof ZoneDevice.Fitted fitted) {
          Device device = fitted.device();
          device.opening().find().ifPresent(openings::add);
          DetectorView view = viewOf.get(device.name());
          if (view != null) {
            areas
                .computeIfAbsent(view.floor(), ignored -> new ArrayList<>())
                .addAll(view.seen().outlines(CoverageMap.ARC_ERROR_METRES));
          } else if (Kinds.isRoomMotion(device.kind())) {
            wholeRoom(input.building(), device, areas);
          }
          input.views().beams().stream()
              .filter(beam -> beam.device().name().equals(device.name()))
              .forEach(beam ->
                  areas
                      .computeIfAbsent(beam.floor(), ignored -> new ArrayList<>())
                      .add(thin(beam)));
        }
      }
    }
    return new Avoided(areas, openings);
  }

  /** A beam as an area that is as good as a line. */
  private static List<Point> thin(BeamLine beam) {
    double length = Math.max(1e-9, beam.from().distanceMetres(beam.to()));
    double acrossX = -(beam.to().yMetres() - beam.from().yMetres()) / length * BEAM_METRES / 2;
    double acrossY = (beam.to().xMetres() - beam.from().xMetres()) / length * BEAM_METRES / 2;
    return List.of(
        new Point(beam.from().xMetres() + acrossX, beam.from().yMetres() + acrossY),
        new Point(beam.to().xMetres() + acrossX, beam.to().yMetres() + acrossY),
        new Point(beam.to().xMetres() - acrossX, beam.to().yMetres() - acrossY),
        new Point(beam.from().xMetres() - acrossX, beam.from().yMetres() - acrossY));
  }

  private static boolean isLive(Zone zone) {
    return zone.response() == ZoneResponse.TWENTY_FOUR_HOUR
        || (Kinds.isArmedBurglary(zone.response()) && zone.liveModes().contains(ArmingMode.AWAY));
  }

  private static void wholeRoom(
      Building building, Device device, Map<String, List<List<Point>>> areas) {
    Optional<DevicePlace> place = building.findDevice(device.name());
    place
        .flatMap(DevicePlace::room)
        .flatMap(building::findRoom)
        .ifPresent(room ->
            areas
                .computeIfAbsent(place.orElseThrow().floor(), ignored -> new ArrayList<>())
                .add(room.outline()));
  }

  private record Way(Opening opening, boolean isReachable, WalkingRoute route) {}

  /** What came of looking for ways to one target. */
  private static final class Looked {
    private final WalkingMap map;
    private final OpeningGuards guards;
    private final List<Way> ways = new ArrayList<>();
    private final List<MissingFact> notKnown = new ArrayList<>();

    Looked(SitePlan plan, Building building, OpeningGuards guards, WalkingMap map, Room target) {
      this.map = map;
      this.guards = guards;
      List<Place> goals = goals(plan, target);
      if (building.findRoom(target.name()).isEmpty()) {
        miss("'" + target.name() + "' is not drawn", "outline: [[0, 0], [4, 0], [4, 3], [0, 3]]");
        return;
      }
      for (Floor floor : plan.floors()) {
        boolean isLowest = floor.equals(plan.floors().getFirst());
        for (Opening opening : floor.openings()) {
          if (opening.isOutside()
              && !opening.excluded().isGiven()
              && !(guards.guard(opening) instanceof Guard.Watched)) {
            look(opening, opening.isReachable(isLowest), goals, target);
          }
        }
      }
    }

    /** Places just inside the inner doors of a room. */
    private List<Place> goals(SitePlan plan, Room target) {
      List<Place> goals = new ArrayList<>();
      plan.openings()
          .filter(opening -> opening.isInnerWay() && opening.touches(target.name()))
          .forEach(opening ->
              place(opening)
                  .map(door ->
                      new Place(
                          target.name(),
                          door.floor(),
                          Optional.of(target.name()),
                          door.at(),
                          Place.Kind.DEVICE))
                  .ifPresent(goals::add));
      return goals;
    }

    private void look(Opening opening, boolean isReachable, List<Place> goals, Room target) {
      Optional<Place> start = place(opening);
      List<Place> ends =
          opening.place().room().equals(target.name())
              ? map.place(target.name()).stream().toList()
              : goals;
      List<WalkingRoute> routes = new ArrayList<>();
      for (Place end : ends) {
        if (start.isPresent()) {
          switch (map.search(start.get(), end)) {
            case WalkingMap.Search.Found(WalkingRoute route) -> routes.add(route);
            case WalkingMap.Search.Unknown(MissingFact missing) -> notKnown.add(missing);
            case WalkingMap.Search.Blocked ignored -> {}
          }
        }
      }
      routes.stream()
          .min(Comparator.comparingDouble(WalkingRoute::metres))
          .ifPresent(route -> ways.add(new Way(opening, isReachable, route)));
    }

    private Optional<Place> place(Opening opening) {
      Optional<Place> place = map.place(opening);
      if (place.isEmpty()) {
        miss(
            "'" + opening.name() + "' has no place in the drawing",
            "edge: 1, at: 1 m, width: 0.9 m");
      }
      return place;
    }

    private void miss(String why, String lineToAdd) {
      notKnown.add(new MissingFact(PlanPath.of("floors"), why, lineToAdd));
    }

    /** A zone that may watch the ways, since the plan does not say where it is. */
    Optional<MissingFact> maybeWatched() {
      return guards.placeless().stream()
          .findFirst()
          .map(zone ->
              new MissingFact(
                  zone.path(),
                  "the plan does not say what " + Words.zone(zone) + " watches",
                  "room: Hall"));
    }
  }

  private static void report(Way way, Room target, Report report) {
    report.found(
        way.isReachable() ? Severity.WARNING : Severity.ADVICE,
        PlanPath.of("floors", way.route().from().floor(), "openings", way.opening().name()),
        (way.isReachable() ? "From '" : "With a ladder to '")
            + way.opening().name()
            + "' one comes into '"
            + target.name()
            + "', a target, by a way of "
            + way.route().metresInWords()
            + " that nothing sees; it takes about "
            + Words.wholeSeconds(way.route().seconds(BURGLAR))
            + ".",
        "Watch '" + way.opening().name() + "', or turn or add a detector so that the way is seen.",
        Involved.openings(List.of(way.opening().name())).and(Involved.rooms(way.route().rooms())));
  }
}
