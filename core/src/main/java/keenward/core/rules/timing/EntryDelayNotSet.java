package keenward.core.rules.timing;

import keenward.core.plan.PlanPath;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneResponse;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** An entry door starts an entry delay that the panel section does not set. */
public final class EntryDelayNotSet implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.TIMING, 2, "entry-delay-not-set", Severity.ERROR)
          .source(Source.practice())
          .purpose("Looks for entry-exit zones whose entry delay has no time in the panel section.")
          .consequence(
              "What the door does is left to chance: the panel's own value, which nobody chose, or no delay at all.")
          .limits(
              "A zone that names no delay starts number 1. A plan that sets no delay at all takes the default of the"
                  + " regime, the panel or the program for number 1.")
          .remedy("Set the delay, or let the zone start one that is set.")
          .broken(
              """
              keenward: 1
              site: Example
              panel:
                entry delays: { 2: 45 s }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
                2: { name: Side door,  response: entry-exit, device: contact, entry delay: 2 }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              panel:
                entry delays: { 1: 30 s, 2: 45 s }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
                2: { name: Side door,  response: entry-exit, device: contact, entry delay: 2 }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    for (Zone zone : input.plan().zones()) {
      if (zone.response() != ZoneResponse.ENTRY_EXIT) {
        continue;
      }
      report.judged();
      int delay = zone.entryDelay().orElse(1);
      if (input.settings().findEntryDelay(delay).isEmpty()) {
        report.found(
            zone.entryDelay().isGiven()
                ? zone.path().then("entry delay")
                : PlanPath.of("panel", "entry delays"),
            Words.atStart(zone)
                + " starts entry delay "
                + delay
                + ", and the panel section sets "
                + (input.plan().panel().entryDelays().isEmpty()
                    ? "none"
                    : "only "
                        + Words.list(
                            input.plan().panel().entryDelays().keySet().stream()
                                .map(String::valueOf)
                                .toList()))
                + ".",
            "Add `" + delay + ": 30 s` to `entry delays:`, or let the zone start another one.",
            Involved.zone(zone.number()));
      }
    }
  }
}
