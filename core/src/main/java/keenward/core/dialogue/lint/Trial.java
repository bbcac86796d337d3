package keenward.core.dialogue.lint;

import java.util.List;
import keenward.core.dialogue.machine.Input;

/**
 * Inputs that belong together: typing a value and confirming it, say.
 *
 * @param inputs the inputs, in order
 * @param chosen whether a person can do this on purpose, at once and without harm
 */
record Trial(List<Input> inputs, boolean chosen) {
  Trial {
    inputs = List.copyOf(inputs);
  }
}
