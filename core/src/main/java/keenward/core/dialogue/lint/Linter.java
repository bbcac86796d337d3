package keenward.core.dialogue.lint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import keenward.core.dialogue.description.PanelDescription;

/** Checks a panel description. */
public final class Linter {
  private static final int MOST_STATES = 60_000;

  private Linter() {}

  /**
   * Checks everything: the description as it stands, then the dialogue by trying it out with the
   * interpreter, whatever the memory may hold.
   */
  public static LintReport lint(PanelDescription description) {
    List<LintFinding> findings = new ArrayList<>();
    KeyMeaningCheck.check(description, findings);
    DisplayCheck.check(description, findings);
    RouteCheck.check(description, findings);
    PlanCheck.check(description, findings);
    MannersCheck.check(description, findings);
    Exploration exploration = Exploration.of(description, MOST_STATES);
    new ExplorationCheck(description, exploration, findings).check();
    findings.sort(Comparator.comparing(LintFinding::severity));
    return new LintReport(
        findings, exploration.nodes().size(), exploration.complete(), exploration.waysTo());
  }
}
