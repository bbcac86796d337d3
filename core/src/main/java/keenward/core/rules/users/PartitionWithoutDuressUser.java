package keenward.core.rules.users;

import java.util.List;
import keenward.core.plan.Partition;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.User;
import keenward.core.plan.UserRole;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** The site uses duress, and a partition has no duress user. */
public final class PartitionWithoutDuressUser implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.USERS, 3, "partition-without-duress-user", Severity.WARNING)
          .source(Source.practice())
          .purpose(
              "Where the plan has a duress user, looks for partitions that people disarm and the duress user does"
                  + " not.")
          .consequence(
              "Somebody forced to open that part of the building enters the code that helps everywhere else, and is"
                  + " refused in front of the robber.")
          .limits(
              "A site without any duress user is let pass: CP-01 keeps duress off by default (from memory). Codes"
                  + " are never in a plan, so how near two codes are is not judged here.")
          .remedy("Give a duress user that partition too.")
          .broken(
              """
              keenward: 1
              site: Example
              monitoring: { account: "2218" }
              partitions:
                Shop: { number: 1 }
                Flat: { number: 2 }
              zones:
                1: { name: Shop door, response: entry-exit, partition: Shop, device: contact }
                2: { name: Flat door, response: entry-exit, partition: Flat, device: contact }
              users:
                1: { name: Bram, role: master, partitions: [Shop, Flat] }
                2: { name: Technician, role: technician }
                3: { name: Under threat, role: duress, partitions: [Shop] }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              monitoring: { account: "2218" }
              partitions:
                Shop: { number: 1 }
                Flat: { number: 2 }
              zones:
                1: { name: Shop door, response: entry-exit, partition: Shop, device: contact }
                2: { name: Flat door, response: entry-exit, partition: Flat, device: contact }
              users:
                1: { name: Bram, role: master, partitions: [Shop, Flat] }
                2: { name: Technician, role: technician }
                3: { name: Under threat, role: duress, partitions: [Shop, Flat] }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              monitoring: { account: "2218" }
              partitions:
                Shop: { number: 1 }
                Flat: { number: 2 }
              zones:
                1: { name: Shop door, response: entry-exit, partition: Shop, device: contact }
                2: { name: Flat door, response: entry-exit, partition: Flat, device: contact }
              users:
                1: { name: Bram, role: master, partitions: [Shop, Flat] }
                2: { name: Technician, role: technician }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    SitePlan plan = input.plan();
    List<User> duress =
        plan.users().stream().filter(user -> user.role() == UserRole.DURESS).toList();
    if (duress.isEmpty()) {
      return;
    }
    report.judged();
    List<String> open =
        plan.partitions().stream()
            .map(Partition::name)
            .filter(name -> plan.users().stream().anyMatch(user -> isOrdinary(user, name)))
            .filter(name -> duress.stream().noneMatch(user -> user.partitions().contains(name)))
            .toList();
    if (!open.isEmpty()) {
      report.found(
          PlanPath.of("users", duress.getFirst().number(), "partitions"),
          "No duress user may use "
              + Words.names(open)
              + ", where others disarm; duress user "
              + duress.getFirst().number()
              + " may use "
              + Words.names(duress.getFirst().partitions())
              + " only.",
          "Add " + Words.names(open) + " to the partitions of a duress user.",
          Involved.NOTHING);
    }
  }

  private static boolean isOrdinary(User user, String partition) {
    return (user.role() == UserRole.MASTER || user.role() == UserRole.USER)
        && user.partitions().contains(partition);
  }
}
