package keenward.core.rules.reporting;

import java.util.Optional;
import keenward.core.plan.Monitoring;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SignalFormat;
import keenward.core.reporting.Account;
import keenward.core.reporting.Decoded;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;

/** The account cannot be sent in its format. */
public final class UnusableAccount implements Rule {

  private static final int LEAST_DIGITS = 3;
  private static final int MOST_DIGITS = 16;

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.REPORTING, 1, "unusable-account", Severity.ERROR)
          .source(
              Source.read(
                  "DC-05",
                  "1999.09",
                  "account field: 4 digits, 0 to 9 and B to F",
                  "public text of the message layout"))
          .source(Source.memory("DC-09", "", "account of 3 to 16 hexadecimal digits"))
          .purpose("Looks whether the monitoring account has a shape that its format can send.")
          .consequence(
              "The panel refuses the account, or cuts it, and the signals arrive under somebody else's name or"
                  + " nobody's.")
          .limits("Whether it is the account that the centre gave is for the test to show.")
          .parameter("digits of a dc-05 account", "4", "")
          .parameter("digits of another account", "3 to 16", "")
          .remedy("Ask the monitoring centre for the account and its format.")
          .broken(
              """
              keenward: 1
              site: Example
              monitoring: { account: "48A1", format: dc-05 }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              monitoring: { account: "48B1", format: dc-05 }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              monitoring: { account: "48F1", format: dc-05 }
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
    PlanPath place = PlanPath.of("monitoring", "account");
    Optional<Monitoring> monitoring = input.plan().monitoring().find();
    Optional<String> account = monitoring.flatMap(each -> each.account().find());
    if (account.isEmpty()) {
      report.notAssessed(
          monitoring.isEmpty() ? PlanPath.of("monitoring") : place,
          "the monitoring account, since the plan gives none",
          monitoring.isEmpty()
              ? "monitoring: { account: \"1234\", format: dc-05 }"
              : "account: \"1234\"");
      return;
    }
    report.judged();
    SignalFormat format = monitoring.get().format().orElse(SignalFormat.DC_05);
    fault(account.get(), format)
        .ifPresent(fault ->
            report.found(
                place,
                "Account '"
                    + account.get()
                    + "' cannot be sent as "
                    + format.word()
                    + ": "
                    + fault
                    + ".",
                "Ask the monitoring centre for the account, and write it in quotes.",
                Involved.NOTHING));
  }

  private static Optional<String> fault(String account, SignalFormat format) {
    return switch (format) {
      case DC_05 ->
          Account.parse(account) instanceof Decoded.Refused<Account> refused
              ? Optional.of(refused.message())
              : Optional.empty();
      case DC_03 ->
          account.matches("[0-9A-F]{" + LEAST_DIGITS + "," + MOST_DIGITS + "}")
              ? Optional.empty()
              : Optional.of(
                  "an account has "
                      + LEAST_DIGITS
                      + " to "
                      + MOST_DIGITS
                      + " digits, 0 to 9 and A to F");
    };
  }
}
