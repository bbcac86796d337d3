package keenward.core.rules;

import java.util.ArrayList;
import java.util.List;

/**
 * What all rules have to say about a plan.
 *
 * @param findings faults, worst first, then by place in the plan
 * @param notAssessed what could not be judged, by place in the plan
 * @param outcomes how each rule went, in the order of the registry
 */
public record CheckResult(
    List<Finding> findings, List<NotAssessed> notAssessed, List<RuleOutcome> outcomes) {

  public CheckResult {
    findings = List.copyOf(findings);
    notAssessed = List.copyOf(notAssessed);
    outcomes = List.copyOf(outcomes);
  }

  /** How many findings have this severity. */
  public int count(Severity severity) {
    return (int) findings.stream().filter(finding -> finding.severity() == severity).count();
  }

  /** Whether any finding is an error. */
  public boolean hasErrors() {
    return count(Severity.ERROR) > 0;
  }

  /** How many findings of which severity, in words. */
  public String summary() {
    List<String> words = new ArrayList<>();
    for (Severity severity : Severity.values()) {
      int count = count(severity);
      if (count > 0) {
        boolean plural = count > 1 && severity != Severity.ADVICE;
        words.add(count + " " + severity.word() + (plural ? "s" : ""));
      }
    }
    return words.isEmpty() ? "no findings" : String.join(", ", words);
  }

  /** Rules that judged all they had to judge, and found no fault. */
  public List<RuleOutcome> passed() {
    return outcomes.stream().filter(RuleOutcome::hasPassed).toList();
  }
}
