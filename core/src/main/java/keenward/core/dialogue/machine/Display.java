package keenward.core.dialogue.machine;

import java.util.List;

/**
 * What a keypad shows.
 *
 * @param lines the lines; empty where the keypad leaves the technician blind
 * @param unknown slots of unknown value that the lines would show; question marks stand in their
 *     place
 */
public record Display(List<String> lines, List<Slot> unknown) {
  public Display {
    lines = List.copyOf(lines);
    unknown = List.copyOf(unknown);
  }

  /** Whether the keypad shows nothing of use here. */
  public boolean blind() {
    return lines.isEmpty();
  }
}
