package keenward.core.rules.partitions;

import java.util.List;
import java.util.Optional;
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

/** A common area is tied to fewer than two other partitions, or to another common area. */
public final class CommonAreaOfOne implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.PARTITIONS, 3, "common-area-of-one", Severity.WARNING)
          .source(Source.practice())
          .purpose(
              "Looks for common areas that are common to fewer than two partitions, to themselves, or to another"
                  + " common area.")
          .consequence(
              "An area common to one partition is just a second part of it; one that hangs on itself or on another"
                  + " common area is never armed, or when it is depends on the panel.")
          .limits("Whether the panel knows common areas at all is for its description to say.")
          .remedy(
              "Name the two or more partitions that share the area, or make it part of the one.")
          .broken(
              """
              keenward: 1
              site: Example
              partitions:
                Shop: { number: 1 }
                Hall: { number: 2, common to: [Shop] }
              zones:
                1: { name: Shop door, response: entry-exit, partition: Shop, device: contact }
                2: { name: Hall door, response: perimeter,  partition: Hall, device: contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              partitions:
                Shop: { number: 1 }
                Flat: { number: 2 }
                Hall: { number: 3, common to: [Shop, Flat] }
              zones:
                1: { name: Shop door, response: entry-exit, partition: Shop, device: contact }
                2: { name: Hall door, response: perimeter,  partition: Hall, device: contact }
                3: { name: Flat door, response: entry-exit, partition: Flat, device: contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              partitions:
                Shop: { number: 1 }
                Hall: { number: 2 }
              zones:
                1: { name: Shop door, response: entry-exit, partition: Shop, device: contact }
                2: { name: Hall door, response: perimeter,  partition: Hall, device: contact }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    for (Partition partition : input.plan().partitions()) {
      if (partition.commonTo().isEmpty()) {
        continue;
      }
      report.judged();
      fault(partition, input.plan().partitions())
          .ifPresent(fault ->
              report.found(
                  PlanPath.of("partitions", partition.name(), "common to"),
                  "Partition '" + partition.name() + "' is common to " + fault + ".",
                  "Name two or more partitions that share '" + partition.name() + "'.",
                  Involved.zones(input.plan().zonesOf(partition).map(Zone::number).toList())));
    }
  }

  private static Optional<String> fault(Partition common, List<Partition> all) {
    if (common.commonTo().contains(common.name())) {
      return Optional.of("itself");
    }
    List<String> chained =
        all.stream()
            .filter(each -> common.commonTo().contains(each.name()) && !each.commonTo().isEmpty())
            .map(Partition::name)
            .toList();
    if (!chained.isEmpty()) {
      return Optional.of(Words.names(chained) + ", which is a common area itself");
    }
    List<String> others = common.commonTo().stream().distinct().toList();
    return others.size() < 2 ? Optional.of(Words.names(others) + " alone") : Optional.empty();
  }
}
