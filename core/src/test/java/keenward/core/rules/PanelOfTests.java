package keenward.core.rules;

import keenward.core.dialogue.description.Capacity;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.machine.SmallPanel;

/** A panel description of which only the capacity matters. */
public final class PanelOfTests {

  private PanelOfTests() {}

  /** The panel. */
  public static PanelDescription holding(Capacity capacity) {
    PanelDescription small = SmallPanel.description();
    return new PanelDescription(
        "Test panel",
        small.family(),
        small.keypads(),
        small.keyMeanings(),
        capacity,
        small.records(),
        small.fields(),
        small.screens(),
        small.locations(),
        small.start(),
        small.leaving(),
        small.manners(),
        small.recovery());
  }
}
