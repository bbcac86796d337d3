package keenward.core.rules.reporting;

import java.util.ArrayList;
import java.util.List;
import keenward.core.plan.Fact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.User;
import keenward.core.plan.UserRole;
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

/** Somebody can call for help, and nobody hears it. */
public final class HelpCallUnheard implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.REPORTING, 3, "help-call-unheard", Severity.WARNING)
          .source(Source.practice())
          .purpose(
              "Looks for hold-up and medical zones and duress users on a site whose plan names no monitoring.")
          .consequence("Somebody presses the button under threat, and no help comes.")
          .limits(
              "A hold-up zone that sounds on site (`silent: no`) and a medical zone are let pass: people on site hear"
                  + " them. That police come to a hold-up is for local rules; never test one without the centre.")
          .remedy("Name the monitoring centre, or take the silent call off the plan.")
          .broken(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Counter button, response: hold-up, device: hold-up-button }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              monitoring: { account: "2218" }
              zones:
                1: { name: Counter button, response: hold-up, device: hold-up-button }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              zones:
                1: { name: Counter button, response: hold-up, device: hold-up-button, silent: no }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    SitePlan plan = input.plan();
    List<Zone> silent =
        plan.zones().stream()
            .filter(zone -> zone.response() == ZoneResponse.HOLD_UP && zone.silent().orElse(true))
            .toList();
    List<User> duress =
        plan.users().stream().filter(user -> user.role() == UserRole.DURESS).toList();
    if (silent.isEmpty() && duress.isEmpty()) {
      return;
    }
    if (plan.monitoring() instanceof Fact.Unknown) {
      report.notAssessed(
          PlanPath.of("monitoring"),
          "whether a call for help is heard, since the monitoring is not known yet",
          "monitoring: { account: \"1234\", format: dc-05 }");
      return;
    }
    report.judged();
    if (!plan.monitoring().isGiven()) {
      List<String> calls = new ArrayList<>();
      silent.forEach(zone -> calls.add(Words.zone(zone)));
      duress.forEach(user -> calls.add("duress user " + user.number() + " '" + user.name() + "'"));
      report.found(
          silent.isEmpty()
              ? PlanPath.of("users", duress.getFirst().number(), "role")
              : silent.getFirst().path().then("response"),
          Words.capitalized(Words.list(calls))
              + (calls.size() == 1 ? " calls" : " call")
              + " for help in silence, and the plan names no monitoring that would hear it.",
          "Add `monitoring:`, or let the zone sound with `silent: no`.",
          Involved.zones(silent.stream().map(Zone::number).toList()));
    }
  }
}
