package keenward.core.rules.timing;

import java.util.List;
import java.util.Optional;
import keenward.core.building.Passage;
import keenward.core.building.Route;
import keenward.core.plan.Pace;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Point;
import keenward.core.plan.Settings;
import keenward.core.quantities.Span;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;
import keenward.core.rules.walk.EntryWay;
import keenward.core.rules.walk.Walk;

/** Somebody needs longer to the keypad than the entry delay lasts. */
public final class EntryDelayTooShort implements Rule {

  private static final double SLOW_METRES_PER_SECOND = 0.92;
  private static final double USUAL_METRES_PER_SECOND = 1.15;
  private static final double BRISK_METRES_PER_SECOND = 1.25;
  private static final double RESERVE_SECONDS = 10;

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.TIMING, 3, "entry-delay-too-short", Severity.WARNING)
          .source(
              Source.read(
                  "TCRP-NCHRP pedestrian study",
                  "2005",
                  "15th percentile walking speeds",
                  "abstract of 'Another look at pedestrian walking speed'"))
          .source(
              Source.read(
                  "Transportation Research Record",
                  "1538",
                  "15th percentile under 65",
                  "summary of the field study"))
          .source(Source.practice())
          .purpose(
              "Adds the shortest possible walk of each habit of disarming, the time at the keypad and a reserve, and"
                  + " compares the sum with the entry delay of the door.")
          .consequence("Somebody slow, or with full hands, sets off the alarm at their own keypad.")
          .limits(
              "The walk is a lower bound: straight lines from door to door and to the keypad, stairs not counted. So"
                  + " a delay that passes may still be short, and one that is found is short for certain.")
          .parameter("slow pace", "0.92", "m/s")
          .parameter("usual pace", "1.15", "m/s")
          .parameter("brisk pace", "1.25", "m/s")
          .parameter("reserve", "10", "s")
          .remedy(
              "Lengthen the delay within what the regime allows, or bring the keypad nearer to the door.")
          .broken(
              """
              keenward: 1
              site: Example
              people:
                Nan:
                  pace: slow
                  habits:
                    comes home: { does: disarm, at: "18:00", through: Front door, keypad: Hall keypad, keypad time: 15 s }
              floors:
                Ground:
                  rooms:
                    Hall: { use: hall, outline: [[0, 0], [2, 0], [2, 14], [0, 14]] }
                  openings:
                    Front door: { kind: door, between: [Hall, outside], edge: 1, at: 0.5 m, width: 0.9 m }
              devices:
                Front contact: { kind: contact, wiring: wired, room: Hall, opening: Front door }
                Hall keypad:   { kind: keypad, wiring: bus, room: Hall, at: [1, 13.8] }
              panel:
                entry delays: { 1: 30 s }
              zones:
                1: { name: Front door, response: entry-exit, device: Front contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              people:
                Nan:
                  pace: slow
                  habits:
                    comes home: { does: disarm, at: "18:00", through: Front door, keypad: Hall keypad, keypad time: 15 s }
              floors:
                Ground:
                  rooms:
                    Hall: { use: hall, outline: [[0, 0], [2, 0], [2, 14], [0, 14]] }
                  openings:
                    Front door: { kind: door, between: [Hall, outside], edge: 1, at: 0.5 m, width: 0.9 m }
              devices:
                Front contact: { kind: contact, wiring: wired, room: Hall, opening: Front door }
                Hall keypad:   { kind: keypad, wiring: bus, room: Hall, at: [1.9, 2] }
              panel:
                entry delays: { 1: 30 s }
              zones:
                1: { name: Front door, response: entry-exit, device: Front contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              people:
                Nan:
                  pace: slow
                  habits:
                    comes home: { does: disarm, at: "18:00", through: Front door, keypad: Hall keypad, keypad time: 15 s }
              floors:
                Ground:
                  rooms:
                    Hall: { use: hall, outline: [[0, 0], [2, 0], [2, 14], [0, 14]] }
                  openings:
                    Front door: { kind: door, between: [Hall, outside], edge: 1, at: 0.5 m, width: 0.9 m }
              devices:
                Front contact: { kind: contact, wiring: wired, room: Hall, opening: Front door }
                Hall keypad:   { kind: keypad, wiring: bus, room: Hall, at: [1, 13.8] }
              panel:
                entry delays: { 1: 60 s }
              zones:
                1: { name: Front door, response: entry-exit, device: Front contact }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    for (EntryWay way : input.entryWays().ways()) {
      Optional<Settings.Resolved> delay =
          input.settings().findEntryDelay(way.zone().entryDelay().orElse(1));
      for (Walk walk : way.walks()) {
        if (walk.habitual().isPresent() && delay.isPresent()) {
          judge(input, way, walk, walk.habitual().get(), delay.get(), report);
        }
      }
    }
  }

  private static void judge(
      CheckInput input,
      EntryWay way,
      Walk walk,
      Walk.Habitual habitual,
      Settings.Resolved delay,
      Report report) {
    PlanPath place =
        PlanPath.of("people", habitual.person().name(), "habits", habitual.habit().name());
    Optional<Span> atKeypad = habitual.habit().keypadTime().find();
    if (atKeypad.isEmpty()) {
      report.notAssessed(
          place,
          "whether entry delay "
              + delay.index()
              + " is long enough for "
              + habitual.person().name()
              + ", since the plan does not say how long they stand at the keypad",
          "keypad time: 8 s");
      return;
    }
    report.judged();
    Pace pace = habitual.person().pace().orElse(Pace.USUAL);
    double metres = leastMetres(input, way, walk);
    double seconds = metres / metresPerSecond(pace) + atKeypad.get().seconds() + RESERVE_SECONDS;
    if (seconds * 1000 > delay.value()) {
      report.found(
          place,
          habitual.person().name()
              + " walks at least "
              + Words.number(Math.floor(metres * 10) / 10)
              + " m from '"
              + way.start()
              + "' to '"
              + walk.keypad().name()
              + "' at "
              + Words.number(metresPerSecond(pace))
              + " m/s and stands there "
              + atKeypad.get().written()
              + ": with 10 s reserve "
              + Words.number(Math.floor(seconds))
              + " s, and entry delay "
              + delay.index()
              + " is "
              + delay.words()
              + ".",
          "Lengthen entry delay "
              + delay.index()
              + ", or bring a keypad nearer to '"
              + way.start()
              + "'.",
          Involved.zone(way.zone().number())
              .and(Involved.devices(List.of(walk.keypad().name())))
              .and(Involved.rooms(walk.route().rooms())));
    }
  }

  /**
   * From the door to the first inner door, along the route, and from the last door to the keypad.
   */
  private static double leastMetres(CheckInput input, EntryWay way, Walk walk) {
    Route route = walk.route();
    Optional<Passage> entry =
        way.door()
            .flatMap(door ->
                input.building().graph().passages().stream()
                    .filter(passage -> passage.name().equals(door.name()))
                    .findFirst());
    double metres = route.leastLengthMetres();
    if (entry.isPresent() && !route.passages().isEmpty()) {
      metres +=
          new Route(
                  List.of(way.start(), route.rooms().getFirst(), route.rooms().get(1)),
                  List.of(entry.get(), route.passages().getFirst()))
              .leastLengthMetres();
    }
    Optional<Passage> last =
        route.passages().isEmpty() ? entry : Optional.of(route.passages().getLast());
    Optional<Point> keypad = walk.keypad().at().find();
    if (last.flatMap(Passage::jambs).isPresent() && keypad.isPresent()) {
      metres += leastDistance(last.get().jambs().get(), keypad.get());
    }
    return metres;
  }

  /** Distance from a place to the nearest point of an opening. */
  private static double leastDistance(Passage.Jambs jambs, Point place) {
    double width = jambs.left().distanceMetres(jambs.right());
    double east = (jambs.right().xMetres() - jambs.left().xMetres()) / width;
    double north = (jambs.right().yMetres() - jambs.left().yMetres()) / width;
    double along =
        (place.xMetres() - jambs.left().xMetres()) * east
            + (place.yMetres() - jambs.left().yMetres()) * north;
    double clamped = Math.clamp(along, 0, width);
    return place.distanceMetres(
        new Point(
            jambs.left().xMetres() + clamped * east, jambs.left().yMetres() + clamped * north));
  }

  private static double metresPerSecond(Pace pace) {
    return switch (pace) {
      case SLOW -> SLOW_METRES_PER_SECOND;
      case USUAL -> USUAL_METRES_PER_SECOND;
      case BRISK -> BRISK_METRES_PER_SECOND;
    };
  }
}
