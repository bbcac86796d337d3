package keenward.core.rules.timing;

import java.util.List;
import java.util.Optional;
import keenward.core.building.walking.EntryWay;
import keenward.core.building.walking.Gait;
import keenward.core.building.walking.Walk;
import keenward.core.building.walking.WalkTime;
import keenward.core.building.walking.WalkingMap.Search;
import keenward.core.building.walking.WalkingRoute;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Settings;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** Somebody needs longer to the keypad than the entry delay lasts. */
public final class EntryDelayTooShort implements Rule {

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
          .source(
              Source.read(
                  "Card, Moran and Newell",
                  "1980",
                  "keystroke-level model",
                  "a university course page with their table"))
          .purpose(
              "Follows the shortest walk round walls and furniture of each habit of disarming, adds door and keypad, and"
                  + " compares what 95 of 100 people of that pace need with the entry delay of the door.")
          .consequence("Somebody slow, or with full hands, sets off the alarm at their own keypad.")
          .limits(
              "Goes by habits, for which doors and keypads have a place in the drawing. The spread of walking speeds is"
                  + " taken as normal; see docs/methods/walking.md. Nobody stops, or carries anything.")
          .parameter("share of walkers", "95", "of 100")
          .parameter("door", "3, slow pace 5", "s")
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
          judge(way, walk, walk.habitual().get(), delay.get(), report);
        }
      }
    }
  }

  private static void judge(
      EntryWay way, Walk walk, Walk.Habitual habitual, Settings.Resolved delay, Report report) {
    PlanPath place =
        PlanPath.of("people", habitual.person().name(), "habits", habitual.habit().name());
    String question =
        "whether entry delay "
            + delay.index()
            + " is long enough for "
            + habitual.person().name()
            + ": ";
    switch (walk.drawn()) {
      case Search.Unknown(MissingFact missing) ->
          report.notAssessed(missing.place(), question + missing.why(), missing.lineToAdd());
      case Search.Blocked(String why) ->
          report.notAssessed(place, question + why, "furniture and openings as they are");
      case Search.Found(WalkingRoute route) -> {
        report.judged();
        WalkTime time = WalkTime.in(route, Optional.of(habitual));
        double seconds = time.seconds(Gait.Share.NEARLY_ALL);
        if (seconds * 1000 > delay.value()) {
          report.found(
              place,
              habitual.person().name()
                  + " walks "
                  + route.metresInWords()
                  + " from '"
                  + way.start()
                  + "' to '"
                  + walk.keypad().name()
                  + "'. With the door and "
                  + Words.wholeSeconds(time.keypadSeconds())
                  + " at the keypad, 95 of 100 people of "
                  + time.pace().word()
                  + " pace need up to "
                  + Words.wholeSeconds(seconds)
                  + ", and entry delay "
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
    }
  }
}
