package keenward.core.rules.timing;

import java.util.List;
import java.util.Optional;
import keenward.core.building.walking.Gait;
import keenward.core.building.walking.SiteWalk;
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

/** Somebody needs longer out of the door than the exit time lasts. */
public final class ExitTimeTooShort implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.TIMING, 4, "exit-time-too-short", Severity.WARNING)
          .source(
              Source.read(
                  "TCRP-NCHRP pedestrian study",
                  "2005",
                  "15th percentile walking speeds",
                  "abstract of 'Another look at pedestrian walking speed'"))
          .source(Source.practice())
          .purpose(
              "Follows the shortest walk from the keypad out of each door by which people arm and leave, adds the door,"
                  + " and compares what 95 of 100 people of that pace need with the exit time.")
          .consequence(
              "Somebody slow is still inside when the system is armed, and the alarm goes off behind them.")
          .limits(
              "Goes by habits of arming; without one out by each entry door from its keypad, at slow pace. Places must"
                  + " be drawn. Speeds as in docs/methods/walking.md; nobody turns back for their keys.")
          .parameter("share of walkers", "95", "of 100")
          .remedy("Lengthen the exit time, or move the keypad nearer to the door.")
          .broken(
              """
              keenward: 1
              site: Example
              people:
                Nan:
                  pace: slow
                  habits:
                    goes out: { does: arm away, at: "10:00", through: Front door, keypad: Hall keypad }
              floors:
                Ground:
                  rooms:
                    Hall: { use: hall, outline: [[0, 0], [2, 0], [2, 30], [0, 30]] }
                  openings:
                    Front door: { kind: door, between: [Hall, outside], edge: 1, at: 0.5 m, width: 0.9 m }
              devices:
                Front contact: { kind: contact, wiring: wired, room: Hall, opening: Front door }
                Hall keypad:   { kind: keypad, wiring: bus, room: Hall, at: [1, 29] }
              panel:
                exit time: 45 s
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
                    goes out: { does: arm away, at: "10:00", through: Front door, keypad: Hall keypad }
              floors:
                Ground:
                  rooms:
                    Hall: { use: hall, outline: [[0, 0], [2, 0], [2, 30], [0, 30]] }
                  openings:
                    Front door: { kind: door, between: [Hall, outside], edge: 1, at: 0.5 m, width: 0.9 m }
              devices:
                Front contact: { kind: contact, wiring: wired, room: Hall, opening: Front door }
                Hall keypad:   { kind: keypad, wiring: bus, room: Hall, at: [1.9, 2] }
              panel:
                exit time: 45 s
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
                    goes out: { does: arm away, at: "10:00", through: Front door, keypad: Hall keypad }
              floors:
                Ground:
                  rooms:
                    Hall: { use: hall, outline: [[0, 0], [2, 0], [2, 30], [0, 30]] }
                  openings:
                    Front door: { kind: door, between: [Hall, outside], edge: 1, at: 0.5 m, width: 0.9 m }
              devices:
                Front contact: { kind: contact, wiring: wired, room: Hall, opening: Front door }
                Hall keypad:   { kind: keypad, wiring: bus, room: Hall, at: [1, 29] }
              panel:
                exit time: 60 s
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
    for (SiteWalk walk : input.walks().walks()) {
      Optional<Settings.Resolved> exit = walk.delay();
      if (walk.kind() == SiteWalk.Kind.EXIT && exit.isPresent()) {
        report.judged();
        if (walk.isShort()) {
          report(walk, exit.get(), report);
        }
      }
    }
  }

  private static void report(SiteWalk walk, Settings.Resolved exit, Report report) {
    report.found(
        exit.path(),
        "From '"
            + walk.from()
            + "' out by '"
            + walk.to()
            + "' it is "
            + walk.time().route().metresInWords()
            + ". With the door, 95 of 100 people of "
            + walk.time().pace().word()
            + " pace need up to "
            + Words.wholeSeconds(walk.time().seconds(Gait.Share.NEARLY_ALL))
            + walk.who().map(who -> " (" + who.person().name() + ")").orElse("")
            + ", and the exit time is "
            + exit.words()
            + ".",
        "Lengthen the exit time, or bring a keypad nearer to '" + walk.to() + "'.",
        Involved.openings(List.of(walk.to()))
            .and(Involved.devices(List.of(walk.from())))
            .and(Involved.rooms(walk.time().route().rooms())));
  }
}
