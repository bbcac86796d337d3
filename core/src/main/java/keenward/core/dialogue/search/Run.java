package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.machine.Departure;
import keenward.core.dialogue.machine.Input;
import keenward.core.dialogue.machine.Interpreter;
import keenward.core.dialogue.machine.Move;
import keenward.core.dialogue.machine.Refusal;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.machine.Stored;
import keenward.core.dialogue.order.Act;

/**
 * Acts tried out one after another from a state. It ends at the first act that is refused, leaves
 * programming in an unsafe way, or needs a value that is not known; acts after that are ignored.
 */
final class Run {
  private final Interpreter interpreter;
  private final String keypad;
  private final State from;
  private final List<Act> acts;
  private final List<Stored> stored;
  private State state;
  private int tenths;
  private boolean dead;
  private boolean known;
  private Optional<Slot> needs = Optional.empty();

  Run(Interpreter interpreter, String keypad, State from) {
    this(interpreter, keypad, from, new ArrayList<>(), new ArrayList<>(), from);
  }

  private Run(
      Interpreter interpreter,
      String keypad,
      State from,
      List<Act> acts,
      List<Stored> stored,
      State state) {
    this.interpreter = interpreter;
    this.keypad = keypad;
    this.from = from;
    this.acts = acts;
    this.stored = stored;
    this.state = state;
  }

  /** The same run so far, to be gone on with in another way. */
  Run copy() {
    Run copy =
        new Run(interpreter, keypad, from, new ArrayList<>(acts), new ArrayList<>(stored), state);
    copy.tenths = tenths;
    copy.dead = dead;
    copy.known = known;
    copy.needs = needs;
    return copy;
  }

  State from() {
    return from;
  }

  State state() {
    return state;
  }

  List<Act> acts() {
    return acts;
  }

  List<Stored> stored() {
    return stored;
  }

  /** Whether every act so far did something. */
  boolean alive() {
    return !dead && needs.isEmpty();
  }

  /** The slot whose value decides what the last act does, if it was not known. */
  Optional<Slot> needs() {
    return needs;
  }

  /** Whether the last act was refused because another record knows the transmitter. */
  boolean knownElsewhere() {
    return known;
  }

  long cost() {
    return Cost.of(acts.size(), tenths, stored.size());
  }

  Run press(String key) {
    if (!alive()) {
      return this;
    }
    Move pressed = interpreter.move(state, new Input.Press(keypad, key));
    if (!take(pressed)) {
      return this;
    }
    int busy = state.clocks().busy();
    acts.add(
        key.startsWith(CODE)
            ? new Act.EnterCode(key.substring(CODE.length()))
            : new Act.Press(key, 1, 0, ""));
    if (busy > 0) {
      tenths += busy;
      take(interpreter.move(state, new Input.TimePasses(busy)));
    }
    return this;
  }

  /** Prefix of the interpreter's key for a whole code. */
  static final String CODE = "code:";

  Run press(List<String> keys) {
    for (String key : keys) {
      press(key);
    }
    return this;
  }

  Run press(String key, int times) {
    for (int time = 0; time < times; time++) {
      press(key);
    }
    return this;
  }

  Run pause(int duration) {
    if (duration > 0 && alive() && take(interpreter.move(state, new Input.TimePasses(duration)))) {
      acts.add(new Act.Wait(duration));
      tenths += duration;
    }
    return this;
  }

  Run transmit(String serial, String part) {
    if (alive() && take(interpreter.move(state, new Input.TransmitterHeard(serial, part)))) {
      acts.add(new Act.Transmit(serial, part, 1));
    }
    return this;
  }

  /**
   * Takes power away and gives it back; only while programming is closed, where it harms nothing.
   */
  Run cutPower() {
    if (alive()) {
      state = interpreter.move(state, new Input.PowerLost()).state();
      state = interpreter.move(state, new Input.PowerBack()).state();
      acts.add(new Act.PowerOff());
      acts.add(new Act.PowerOn());
    }
    return this;
  }

  private boolean take(Move move) {
    if (move.needs().isPresent()) {
      needs = move.needs();
      return false;
    }
    known = move.refusal().filter(Refusal.KNOWN_ALREADY::equals).isPresent();
    if (known) {
      state = move.state();
    }
    if (move.refusal().isPresent() || move.left().filter(Run::harmful).isPresent()) {
      dead = true;
      return false;
    }
    state = move.state();
    stored.addAll(move.stored());
    return true;
  }

  private static boolean harmful(Departure departure) {
    return !departure.safe() || departure.locked();
  }
}
