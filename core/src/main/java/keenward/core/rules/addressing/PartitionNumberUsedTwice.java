package keenward.core.rules.addressing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import keenward.core.plan.Partition;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Zone;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** Two partitions have one number. */
public final class PartitionNumberUsedTwice implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.ADDRESSING, 3, "partition-number-used-twice", Severity.ERROR)
          .source(Source.practice())
          .purpose("Looks for two partitions with the same number.")
          .consequence(
              "The panel knows partitions by number: the two are armed and disarmed as one, and every signal names"
                  + " one of them for both.")
          .limits("Numbers of zones and users are keys of the plan and cannot occur twice.")
          .remedy("Give each partition a number of its own.")
          .broken(
              """
              keenward: 1
              site: Example
              partitions:
                Shop: { number: 1 }
                Flat: { number: 1 }
              zones:
                1: { name: Shop door, response: entry-exit, partition: Shop }
                2: { name: Flat door, response: entry-exit, partition: Flat }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              partitions:
                Shop: { number: 1 }
                Flat: { number: 2 }
              zones:
                1: { name: Shop door, response: entry-exit, partition: Shop }
                2: { name: Flat door, response: entry-exit, partition: Flat }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    if (!input.plan().hasPartitions()) {
      return;
    }
    Map<Integer, Partition> byNumber = new LinkedHashMap<>();
    for (Partition partition : input.plan().partitions()) {
      report.judged();
      Partition first = byNumber.putIfAbsent(partition.number(), partition);
      if (first != null) {
        report.found(
            PlanPath.of("partitions", partition.name(), "number"),
            "Partitions "
                + Words.names(List.of(first.name(), partition.name()))
                + " both have number "
                + partition.number()
                + ".",
            "Give partition '" + partition.name() + "' a number that no other has.",
            Involved.zones(input.plan().zonesOf(partition).map(Zone::number).toList()));
      }
    }
  }
}
