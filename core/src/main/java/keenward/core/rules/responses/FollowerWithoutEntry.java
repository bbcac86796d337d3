package keenward.core.rules.responses;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Ties;
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

/** A follower has no entry door that it could follow. */
public final class FollowerWithoutEntry implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.RESPONSES, 3, "follower-without-entry", Severity.WARNING)
          .source(Source.practice())
          .purpose(
              "Looks for followers in whose partition, or a partition tied to it, no zone starts an entry delay, and"
                  + " for followers bound to a zone that starts none.")
          .consequence(
              "The follower alarms at once, always: somebody who comes in the intended way sets it off.")
          .limits("Does not look at the walk itself; the rules on the entry route do.")
          .remedy("Bind the follower to an entry-exit zone, or give it the response instant.")
          .broken(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Hall door,   response: perimeter, device: contact }
                2: { name: Hall motion, response: follower,  device: motion }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Hall door,   response: entry-exit, device: contact }
                2: { name: Hall motion, response: follower,   device: motion }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Hall door,   response: entry-exit, device: contact }
                2: { name: Hall motion, response: follower,   device: motion, follows: [1] }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    Set<String> withEntry = new HashSet<>();
    for (Zone zone : input.plan().zones()) {
      if (zone.response() == ZoneResponse.ENTRY_EXIT) {
        withEntry.addAll(zone.partitions());
      }
    }
    for (Zone zone : input.plan().zones()) {
      if (zone.response() == ZoneResponse.FOLLOWER) {
        report.judged();
        judge(input.plan(), zone, withEntry, report);
      }
    }
  }

  private static void judge(SitePlan plan, Zone follower, Set<String> withEntry, Report report) {
    List<Zone> wrong =
        follower.follows().stream()
            .map(plan::findZone)
            .flatMap(Optional::stream)
            .filter(zone -> zone.response() != ZoneResponse.ENTRY_EXIT)
            .toList();
    if (!wrong.isEmpty()) {
      report.found(
          follower.path().then("follows"),
          Words.atStart(follower)
              + " follows "
              + Words.zones(wrong)
              + ", where no entry delay starts.",
          "Bind zone " + follower.number() + " to entry-exit zones only.",
          Involved.zone(follower.number())
              .and(Involved.zones(wrong.stream().map(Zone::number).toList())));
      return;
    }
    Set<String> tied = Ties.of(plan, follower.partitions());
    if (follower.follows().isEmpty() && !Ties.meet(tied, withEntry)) {
      report.found(
          follower.path().then("response"),
          Words.atStart(follower)
              + " is a follower, and no zone of "
              + Words.names(List.copyOf(tied))
              + " starts an entry delay.",
          "Give the entry door the response entry-exit, or zone "
              + follower.number()
              + " the response instant.",
          Involved.zone(follower.number()));
    }
  }
}
