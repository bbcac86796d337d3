package keenward.core.rules.reporting;

import keenward.core.plan.Monitoring;
import keenward.core.plan.SignalFormat;
import keenward.core.plan.Zone;
import keenward.core.reporting.EventReport;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;

/** A zone number has no room in a signal. */
public final class NumberTooLargeToSend implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.REPORTING, 4, "number-too-large-to-send", Severity.ERROR)
          .source(
              Source.read(
                  "DC-05",
                  "1999.09",
                  "message layout: three digits of zone or user",
                  "public text of the message layout"))
          .purpose("Looks for zone numbers that a DC-05 message has no room for.")
          .consequence("The centre is told of another zone, or of none.")
          .limits("Judges monitored sites with format dc-05, or none stated.")
          .parameter("largest zone number", "999", "")
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
          .nearMiss(
              """
              keenward: 1
              site: Example
              zones:
                1000: { name: Front door, response: entry-exit, device: contact }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    boolean sendsDc05 =
        input
            .plan()
            .monitoring()
            .find()
            .map(Monitoring::format)
            .map(format -> format.orElse(SignalFormat.DC_05) == SignalFormat.DC_05)
            .orElse(false);
    if (!sendsDc05) {
      return;
    }
    for (Zone zone : input.plan().zones()) {
      report.judged();
      if (zone.number() > EventReport.MOST_ZONE_OR_USER) {
        report.found(
            zone.path(),
            "Zone number "
                + zone.number()
                + " has no room in a DC-05 message, which goes up to "
                + EventReport.MOST_ZONE_OR_USER
                + ".",
            "Choose a number up to " + EventReport.MOST_ZONE_OR_USER + ".",
            Involved.zone(zone.number()));
      }
    }
  }
}
