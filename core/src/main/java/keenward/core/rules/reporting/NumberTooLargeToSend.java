package keenward.core.rules.reporting;

import keenward.core.plan.Monitoring;
import keenward.core.plan.Partition;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SignalFormat;
import keenward.core.plan.SitePlan;
import keenward.core.plan.User;
import keenward.core.plan.Zone;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;

/** A number does not fit into its field of a signal. */
public final class NumberTooLargeToSend implements Rule {

  private static final int LARGEST_ZONE_OR_USER = 999;
  private static final int LARGEST_PARTITION = 99;

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.REPORTING, 4, "number-too-large-to-send", Severity.ERROR)
          .source(
              Source.read(
                  "DC-05", "1999.09", "message layout: 2 digits of partition, 3 of zone or user", "public text of the message layout"))
          .purpose("Looks for zone, user and partition numbers that a DC-05 message has no room for.")
          .consequence("The signal is cut or refused: the centre is told of another zone, or of nothing.")
          .limits("Judges monitored sites with format dc-05, or none stated.")
          .parameter("largest zone or user number", "999", "")
          .parameter("largest partition number", "99", "")
          .remedy("Choose a smaller number.")
          .broken(
              """
              keenward: 1
              site: Example
              monitoring: { account: "2218", format: dc-05 }
              zones:
                1000: { name: Front door, response: entry-exit, device: contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              monitoring: { account: "2218", format: dc-05 }
              zones:
                999: { name: Front door, response: entry-exit, device: contact }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    SitePlan plan = input.plan();
    boolean sendsDc05 =
        plan.monitoring()
            .find()
            .map(Monitoring::format)
            .map(format -> format.orElse(SignalFormat.DC_05) == SignalFormat.DC_05)
            .orElse(false);
    if (!sendsDc05) {
      return;
    }
    for (Zone zone : plan.zones()) {
      judge("Zone", zone.number(), LARGEST_ZONE_OR_USER, zone.path(), Involved.zone(zone.number()), report);
    }
    for (User user : plan.users()) {
      PlanPath place = PlanPath.of("users", user.number());
      judge("User", user.number(), LARGEST_ZONE_OR_USER, place, Involved.NOTHING, report);
    }
    for (Partition partition : plan.partitions()) {
      PlanPath place = PlanPath.of("partitions", partition.name(), "number");
      judge("Partition", partition.number(), LARGEST_PARTITION, place, Involved.NOTHING, report);
    }
  }

  private static void judge(
      String what, int number, int largest, PlanPath place, Involved involved, Report report) {
    report.judged();
    if (number > largest) {
      report.found(
          place,
          what + " number " + number + " does not fit into a DC-05 message, which goes up to " + largest + ".",
          "Choose a number up to " + largest + ".",
          involved);
    }
  }
}
