package keenward.core.rules.timing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import keenward.core.building.walking.Gait;
import keenward.core.building.walking.SiteWalk;
import keenward.core.plan.Setting;
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

/** An entry delay lasts much longer than anybody needs. */
public final class EntryDelayLongerThanNeeded implements Rule {

  private static final double TIMES = 2;
  private static final double MORE_SECONDS = 30;

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.TIMING, 5, "entry-delay-longer-than-needed", Severity.ADVICE)
          .source(Source.practice())
          .purpose(
              "Compares each entry delay that the plan sets with what 95 of 100 of its slowest walkers need to the"
                  + " keypad.")
          .consequence(
              "A burglar who forces that door has the rest of the delay before anything sounds.")
          .limits(
              "Only where the walks of every door with that delay are drawn; the slowest of them counts. A delay that"
                  + " breaks the regime is that rule's matter, and the shortest that it allows is let pass. Who wants the time for other reasons keeps it.")
          .parameter("longer than", "2", "times the need")
          .parameter("and by more than", "30", "s")
          .remedy("Shorten the delay to what is needed and a few seconds more.")
          .broken(
              """
              keenward: 1
              site: Example
              people:
                Ines:
                  pace: usual
                  habits:
                    comes home: { does: disarm, at: "18:00", through: Front door, keypad: Hall keypad }
              floors:
                Ground:
                  rooms:
                    Hall: { use: hall, outline: [[0, 0], [2, 0], [2, 8], [0, 8]] }
                  openings:
                    Front door: { kind: door, between: [Hall, outside], edge: 1, at: 0.5 m, width: 0.9 m }
              devices:
                Front contact: { kind: contact, wiring: wired, room: Hall, opening: Front door }
                Hall keypad:   { kind: keypad, wiring: bus, room: Hall, at: [1.9, 2] }
              panel:
                entry delays: { 1: 60 s }
              zones:
                1: { name: Front door, response: entry-exit, device: Front contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              people:
                Ines:
                  pace: usual
                  habits:
                    comes home: { does: disarm, at: "18:00", through: Front door, keypad: Hall keypad }
              floors:
                Ground:
                  rooms:
                    Hall: { use: hall, outline: [[0, 0], [2, 0], [2, 8], [0, 8]] }
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
                Ines:
                  pace: usual
                  habits:
                    comes home: { does: disarm, at: "18:00", through: Front door, keypad: Hall keypad, keypad time: 30 s }
              floors:
                Ground:
                  rooms:
                    Hall: { use: hall, outline: [[0, 0], [2, 0], [2, 8], [0, 8]] }
                  openings:
                    Front door: { kind: door, between: [Hall, outside], edge: 1, at: 0.5 m, width: 0.9 m }
              devices:
                Front contact: { kind: contact, wiring: wired, room: Hall, opening: Front door }
                Hall keypad:   { kind: keypad, wiring: bus, room: Hall, at: [1.9, 2] }
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
    for (Settings.Resolved delay : input.settings().all()) {
      if (delay.setting() == Setting.ENTRY_DELAY
          && delay.origin() == Settings.Origin.PLAN
          && delay.broken().isEmpty()
          && input.entryWays().notKnown().isEmpty()) {
        walks(input, delay).ifPresent(walks -> judge(delay, walks, report));
      }
    }
  }

  /** The walks for which a delay runs; empty when there is none, or one of them is not drawn. */
  private static Optional<List<SiteWalk>> walks(CheckInput input, Settings.Resolved delay) {
    long wanted =
        input.entryWays().ways().stream()
            .filter(way -> way.zone().entryDelay().orElse(1) == delay.index())
            .mapToLong(way -> Math.max(1, way.walks().size()))
            .sum();
    List<SiteWalk> walks = new ArrayList<>();
    for (SiteWalk walk : input.walks().walks()) {
      if (walk.kind() == SiteWalk.Kind.ENTRY && walk.delay().filter(delay::equals).isPresent()) {
        walks.add(walk);
      }
    }
    return walks.isEmpty() || walks.size() < wanted ? Optional.empty() : Optional.of(walks);
  }

  private static void judge(Settings.Resolved delay, List<SiteWalk> walks, Report report) {
    report.judged();
    SiteWalk slowest =
        walks.stream()
            .max(Comparator.comparingDouble(EntryDelayLongerThanNeeded::neededSeconds))
            .orElseThrow();
    double needed = neededSeconds(slowest);
    double seconds = delay.value() / 1000.0;
    boolean isShortestAllowed =
        delay.figures().stream().anyMatch(figure -> !figure.allows(delay.value() - 1));
    if (isShortestAllowed || seconds <= TIMES * needed || seconds <= needed + MORE_SECONDS) {
      return;
    }
    report.found(
        delay.path(),
        "Entry delay "
            + delay.index()
            + " is "
            + delay.words()
            + ". The slowest way in, from '"
            + slowest.from()
            + "' to '"
            + slowest.to()
            + "', takes 95 of 100 people of "
            + slowest.time().pace().word()
            + " pace up to "
            + Words.wholeSeconds(needed)
            + ".",
        "Shorten entry delay " + delay.index() + ", or leave it and say why to the owner.",
        Involved.openings(List.of(slowest.from())).and(Involved.devices(List.of(slowest.to()))));
  }

  private static double neededSeconds(SiteWalk walk) {
    return walk.time().seconds(Gait.Share.NEARLY_ALL);
  }
}
