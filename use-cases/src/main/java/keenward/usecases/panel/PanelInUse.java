package keenward.usecases.panel;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.planned.PanelDefaults;
import keenward.core.plan.Setting;

/** The panel of a site, as far as it is described. */
public sealed interface PanelInUse {

  /**
   * A described panel.
   *
   * @param description the description
   * @param file where it was read
   * @param sha256 hash of that file
   */
  record Described(PanelDescription description, Path file, String sha256) implements PanelInUse {}

  /**
   * A panel without a description.
   *
   * @param why why there is none
   * @param remedy what would bring one
   */
  record Undescribed(String why, String remedy) implements PanelInUse {}

  /** The description, when there is one. */
  default Optional<PanelDescription> findDescription() {
    return this instanceof Described described
        ? Optional.of(described.description())
        : Optional.empty();
  }

  /** The panel's own defaults of system-wide settings; empty without a description. */
  default Map<Setting, Long> defaults() {
    return findDescription().map(PanelDefaults::of).orElse(Map.of());
  }
}
