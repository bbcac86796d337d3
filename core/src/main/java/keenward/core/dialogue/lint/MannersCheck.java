package keenward.core.dialogue.lint;

import java.util.List;
import keenward.core.dialogue.description.KeypadKind;
import keenward.core.dialogue.description.Leaving;
import keenward.core.dialogue.description.PanelDescription;

/** Times that leave no chance to press anything, and locks without a way back. */
final class MannersCheck {
  private MannersCheck() {}

  static void check(PanelDescription description, List<LintFinding> findings) {
    int idle = description.manners().idleTenths();
    for (KeypadKind keypad : description.keypads()) {
      if (idle > 0 && keypad.lagTenths() >= idle) {
        findings.add(
            new LintFinding(
                LintSeverity.ERROR,
                Places.of("keypads", keypad.name(), "lag"),
                "programming drops out before the next key is heard",
                "check the lag and the idle time"));
      }
    }
    boolean locks =
        description.leaving().values().stream().anyMatch(Leaving::locks)
            || description.manners().idle().map(Leaving::locks).orElse(false);
    if (locks && description.recovery().isEmpty()) {
      findings.add(
          new LintFinding(
              LintSeverity.WARNING,
              "/leaving",
              "a way of leaving locks programming, and no recovery is described",
              "add recovery: the steps that get back in"));
    }
  }
}
