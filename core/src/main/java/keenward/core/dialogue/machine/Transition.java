package keenward.core.dialogue.machine;

import java.util.List;
import java.util.Optional;

/**
 * What an input does.
 *
 * @param state the state afterwards; the state before where {@code needs} is set
 * @param display what the keypad in use shows afterwards
 * @param stored what was stored, in order
 * @param refusal why the panel refused, if it did; a refusal may still move on (a wrong code)
 * @param left how programming was left by this input, if it was
 * @param needs the slot whose unknown value decides what happens; {@link Interpreter#assume} a
 *     value and apply again
 */
public record Transition(
    State state,
    Display display,
    List<Stored> stored,
    Optional<Refusal> refusal,
    Optional<Departure> left,
    Optional<Slot> needs) {
  public Transition {
    stored = List.copyOf(stored);
  }
}
