package keenward.core.dialogue.order;

import java.util.List;
import java.util.OptionalInt;
import keenward.core.dialogue.machine.Slot;

/**
 * What follows when a session drops out at some step.
 *
 * @param lost fields whose new value is lost
 * @param halfEntered fields that may be left with a value which was only half entered
 * @param goOnAt number of the instruction from which to go on, after coming back to its screen;
 *     absent where a new order is needed, prepared from what the panel holds then
 */
public record Setback(List<Slot> lost, List<Slot> halfEntered, OptionalInt goOnAt) {
  public Setback {
    lost = List.copyOf(lost);
    halfEntered = List.copyOf(halfEntered);
  }

  /** Whether nothing at all is lost or spoilt. */
  public boolean harmless() {
    return lost.isEmpty() && halfEntered.isEmpty();
  }
}
