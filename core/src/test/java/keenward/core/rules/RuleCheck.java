package keenward.core.rules;

import java.util.List;
import keenward.core.plan.PlanBuilder;

/** Runs one rule over a test's plan and shows its verdict in short lines. */
public final class RuleCheck {

  private RuleCheck() {}

  /** The whole report. */
  public static Report run(Rule rule, CheckInput input) {
    Report report = new Report(rule.card());
    rule.check(input, report);
    return report;
  }

  /** The whole report of a plan on its own. */
  public static Report run(Rule rule, PlanBuilder plan) {
    return run(rule, CheckInput.of(plan.build()));
  }

  /** Each finding as {@code severity at place: what}. */
  public static List<String> findings(Rule rule, PlanBuilder plan) {
    return lines(run(rule, plan));
  }

  /** Each finding of a report as {@code severity at place: what}. */
  public static List<String> lines(Report report) {
    return report.findings().stream()
        .map(each -> each.severity().word() + " at " + each.place() + ": " + each.what())
        .toList();
  }

  /** What could not be judged, as {@code place: why; add: line}. */
  public static List<String> notAssessed(Rule rule, PlanBuilder plan) {
    return notAssessed(run(rule, plan));
  }

  /** What a report could not judge, as {@code place: why; add: line}. */
  public static List<String> notAssessed(Report report) {
    return report.notAssessed().stream()
        .map(each -> each.place() + ": " + each.why() + "; add: " + each.lineToAdd())
        .toList();
  }
}
