package keenward.usecases.order;

import java.nio.file.Path;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.MemoryLayout;
import keenward.usecases.site.BadInput;

/** What the panel holds before anything is keyed in. */
public sealed interface FoundMemory {

  /** A new panel, or one put back to its factory state. */
  record Defaults() implements FoundMemory {}

  /** Nobody knows. */
  record Unknown() implements FoundMemory {}

  /**
   * As a file says.
   *
   * @param path the file
   */
  record FromFile(Path path) implements FoundMemory {}

  /** As {@code --from} takes it. */
  static FoundMemory of(String text) {
    return switch (text) {
      case "defaults" -> new Defaults();
      case "unknown" -> new Unknown();
      default -> new FromFile(Path.of(text));
    };
  }

  /** In words. */
  default String words() {
    return switch (this) {
      case Defaults defaults -> "a new panel with its factory values";
      case Unknown unknown -> "a panel of which nothing is known";
      case FromFile file -> "a panel as " + file.path().getFileName() + " says";
    };
  }

  /**
   * The memory.
   *
   * @throws BadInput when the file does not fit the description
   */
  default Memory memory(PanelDescription description, MemoryLayout layout) throws BadInput {
    return switch (this) {
      case Defaults defaults -> layout.initial();
      case Unknown unknown -> layout.unknown();
      case FromFile file -> FoundFiles.load(file.path(), description);
    };
  }
}
