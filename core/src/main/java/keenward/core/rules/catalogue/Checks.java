package keenward.core.rules.catalogue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import keenward.core.rules.CheckInput;
import keenward.core.rules.CheckResult;
import keenward.core.rules.Finding;
import keenward.core.rules.NotAssessed;
import keenward.core.rules.PlaceOrder;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleOutcome;

/** Runs rules over a plan. The same input gives the same result. */
public final class Checks {

  private static final Comparator<Finding> WORST_FIRST =
      Comparator.comparing(Finding::severity)
          .thenComparing(Finding::place, PlaceOrder.READING)
          .thenComparing(Finding::code)
          .thenComparing(Finding::what);

  private static final Comparator<NotAssessed> BY_PLACE =
      Comparator.comparing(NotAssessed::place, PlaceOrder.READING)
          .thenComparing(NotAssessed::code)
          .thenComparing(NotAssessed::why);

  private Checks() {}

  /** Runs every rule. */
  public static CheckResult run(CheckInput input) {
    return run(input, RuleRegistry.all());
  }

  /** Runs some rules. */
  public static CheckResult run(CheckInput input, List<Rule> rules) {
    List<Finding> findings = new ArrayList<>();
    List<NotAssessed> notAssessed = new ArrayList<>();
    List<RuleOutcome> outcomes = new ArrayList<>();
    for (Rule rule : rules) {
      Report report = new Report(rule.card());
      rule.check(input, report);
      findings.addAll(report.findings());
      notAssessed.addAll(report.notAssessed());
      outcomes.add(
          new RuleOutcome(
              rule.card().code(),
              report.judgedCount(),
              report.findings().size(),
              report.notAssessed().size()));
    }
    findings.sort(WORST_FIRST);
    notAssessed.sort(BY_PLACE);
    return new CheckResult(findings, notAssessed, outcomes);
  }
}
