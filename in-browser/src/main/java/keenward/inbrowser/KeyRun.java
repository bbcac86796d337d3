package keenward.inbrowser;

import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.machine.Input;
import keenward.core.dialogue.machine.Interpreter;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.machine.Stored;
import keenward.core.dialogue.machine.Transition;

/**
 * Presses keys on one keypad of a panel as found when new, and tells what comes of each.
 *
 * <p>Keys stand apart by spaces. A whole code is `code:` and the name it goes by; `wait:` and a
 * number lets that many tenths of a second pass.
 */
final class KeyRun {

  private static final String WAIT = "wait:";

  private final Interpreter interpreter;
  private final String keypad;

  KeyRun(PanelDescription description, String keypad) {
    this.interpreter = new Interpreter(description);
    this.keypad = keypad;
  }

  /** What the keypad shows after each key, with what was stored, refused or left; a line each. */
  String press(String keys) {
    StringBuilder told = new StringBuilder();
    State state = interpreter.start(interpreter.layout().initial());
    for (String key : keys.split(" ", -1)) {
      if (key.isEmpty()) {
        continue;
      }
      Transition transition = after(state, key);
      state = transition.state();
      told.append(key).append(" -> ").append(shown(transition));
      for (Stored stored : transition.stored()) {
        told.append("; stored ").append(stored.slot().describe());
      }
      transition.refusal().ifPresent(refusal -> told.append("; refused: ").append(refusal));
      transition.left().ifPresent(left -> told.append("; left: ").append(left.way()));
      told.append('\n');
    }
    return told.toString();
  }

  private static String shown(Transition transition) {
    return String.join(" / ", transition.display().lines()).stripTrailing();
  }

  private Transition after(State state, String key) {
    if (key.startsWith(WAIT)) {
      int tenths = Integer.parseInt(key.substring(WAIT.length()));
      return interpreter.apply(state, new Input.TimePasses(tenths));
    }
    return interpreter.pressAndWait(state, keypad, key);
  }
}
