package keenward.core.dialogue.lint;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the linter found.
 *
 * @param findings findings, errors first
 * @param statesExplored how many states of the dialogue were looked at
 * @param complete whether that was all of them (up to values that no condition tells apart)
 * @param waysTo for each screen that can be reached: inputs that lead there from rest, in words
 */
public record LintReport(
    List<LintFinding> findings,
    int statesExplored,
    boolean complete,
    Map<String, List<String>> waysTo) {
  public LintReport {
    findings = List.copyOf(findings);
    waysTo = Collections.unmodifiableMap(new LinkedHashMap<>(waysTo));
  }

  /** Whether there is no finding that forbids to make an order. */
  public boolean fit() {
    return findings.stream().noneMatch(each -> each.severity() == LintSeverity.ERROR);
  }
}
