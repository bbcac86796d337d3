package keenward.files.plan;

import java.util.List;
import keenward.core.plan.PanelSettings;
import keenward.core.quantities.Resistance;

/** Facts of the panel that do not go together. */
final class PanelFaults {

  private PanelFaults() {}

  static void check(PlanDraft draft) {
    draft
        .root()
        .find(SitePlanShape.PANEL)
        .map(PanelSettings::loopThresholds)
        .ifPresent(thresholds ->
            thresholds.forEach((wiring, values) -> {
              if (!isRising(values)) {
                draft.fault(
                    draft.value("panel", "loop thresholds", wiring.word()),
                    "the thresholds do not rise",
                    "each larger than the one before",
                    "");
              }
            }));
  }

  private static boolean isRising(List<Resistance> values) {
    for (int i = 1; i < values.size(); i++) {
      if (values.get(i).ohms() <= values.get(i - 1).ohms()) {
        return false;
      }
    }
    return true;
  }
}
