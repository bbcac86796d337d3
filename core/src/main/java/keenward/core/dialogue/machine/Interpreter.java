package keenward.core.dialogue.machine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.KeypadKind;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.Value;

/**
 * The meaning of a panel description. Total and deterministic: every input in every state has
 * exactly one result, and nothing is thrown for what a person or the world may do.
 *
 * <p>Memory may hold unknown values. The interpreter then answers for all of them at once as long
 * as what happens is the same for each; otherwise it names the slot whose value it needs ({@link
 * Transition#needs}) and changes nothing.
 */
public final class Interpreter {
  private final Rules rules;

  /** An interpreter of {@code description}, whose names must resolve. */
  public Interpreter(PanelDescription description) {
    this.rules = new Rules(description);
  }

  /** The description. */
  public PanelDescription description() {
    return rules.description;
  }

  /** Where each field lies in a memory. */
  public MemoryLayout layout() {
    return rules.layout;
  }

  /** The panel at rest with this memory, powered up long ago. */
  public State start(Memory memory) {
    if (memory.size() != rules.layout.size()) {
      throw new IllegalArgumentException("memory of another panel");
    }
    return new State(
        rules.description.start(),
        Typing.EMPTY,
        rules.firstRecords(),
        -1,
        -1,
        "",
        memory,
        memory,
        new Clocks(0, 0, 0, 0, 0, rules.longestWindowTenths + 1),
        true,
        "",
        false,
        Optional.empty(),
        "");
  }

  /** What an input does in a state. */
  public Transition apply(State state, Input input) {
    return shown(
        move(state, input), input instanceof Input.Press press ? press.keypad() : shownOn(state));
  }

  /** What an input does in a state, without drawing the display: for searches. */
  public Move move(State state, Input input) {
    return switch (input) {
      case Input.Press press -> press(state, press);
      case Input.TimePasses time ->
          attempt(state, state, turn -> Clockwork.pass(turn, time.tenths()));
      case Input.TransmitterHeard heard ->
          attempt(
              state,
              state,
              turn -> {
                if (!turn.powered) {
                  throw Interrupted.refused(Refusal.NO_POWER);
                }
                if (turn.deaf > 0) {
                  throw Interrupted.refused(Refusal.RESTARTING);
                }
                Hearing.hear(turn, heard);
              });
      case Input.PowerLost lost ->
          attempt(
              state,
              state,
              turn -> {
                if (turn.powered) {
                  turn.leave(rules.description.manners().powerLost());
                  turn.powered = false;
                  turn.busy = 0;
                }
              });
      case Input.PowerBack back ->
          attempt(
              state,
              state,
              turn -> {
                if (!turn.powered) {
                  turn.powered = true;
                  turn.sincePower = 0;
                  turn.deaf = rules.description.manners().powerUpTenths();
                  turn.keypadsRestart = rules.slowestKeypadRestartTenths;
                }
              });
    };
  }

  /**
   * Presses a key and waits until the panel hears the next one. The display is that after the wait.
   */
  public Transition pressAndWait(State state, String keypad, String key) {
    return shown(moveAndWait(state, keypad, key), keypad);
  }

  /** Presses a key and waits until the panel hears the next one, without drawing the display. */
  public Move moveAndWait(State state, String keypad, String key) {
    Move pressed = move(state, new Input.Press(keypad, key));
    int busy = pressed.state().clocks().busy();
    if (pressed.needs().isPresent() || busy == 0) {
      return pressed;
    }
    Move waited = move(pressed.state(), new Input.TimePasses(busy));
    if (waited.needs().isPresent()) {
      return new Move(state, List.of(), Optional.empty(), Optional.empty(), waited.needs());
    }
    List<Stored> stored = pressed.stored();
    if (!waited.stored().isEmpty()) {
      stored = new ArrayList<>(stored);
      stored.addAll(waited.stored());
    }
    return new Move(
        waited.state(),
        stored,
        pressed.refusal(),
        pressed.left().or(waited::left),
        Optional.empty());
  }

  /** What a keypad shows in a state. */
  public Display display(State state, String keypad) {
    return Renderer.display(rules, state, keypad);
  }

  /** Number of the current record of a kind. */
  public int record(State state, String kind) {
    return state.record(rules.kind(kind));
  }

  /** The slot that a field reference means in a state, unless no location was gone to. */
  public Optional<Slot> slot(State state, FieldReference reference) {
    return rules.slot(reference, state::record, state.location());
  }

  /** Whether programming is open. */
  public boolean programmingOpen(State state) {
    return rules.screen(state.screen()).programming();
  }

  /** How long until a keypad can be used again, in tenths of a second. */
  public int restartTenths(State state, String keypad) {
    int own =
        rules
            .description
            .findKeypad(keypad)
            .map(kind ->
                state.clocks().keypadsRestart()
                    - (rules.slowestKeypadRestartTenths - kind.restartTenths()))
            .orElse(0);
    return Math.max(0, Math.max(own, state.clocks().deaf()));
  }

  /**
   * The same state where an unknown slot is taken to hold {@code value} (or, with an unknown value,
   * to be narrowed to it).
   */
  public State assume(State state, Slot slot, Value value) {
    if (state.working().get(slot).known()) {
      throw new IllegalArgumentException(slot.describe() + " is known");
    }
    // While a session is open, a joined state may hold unknown values in both memories that are not
    // the same one; the committed memory then stays as vague as it is.
    boolean same = !programmingOpen(state) || rules.description.manners().keepsAtOnce();
    return state.withMemories(
        state.working().with(slot, value),
        same ? state.committed().with(slot, value) : state.committed(),
        state.clocks());
  }

  /** The same state with another record of a kind as the current one. */
  public State chooseRecord(State state, String kind, int number) {
    int index = rules.kind(kind);
    if (!rules.kindAt(index).contains(number)) {
      throw new IllegalArgumentException("no " + kind + " " + number);
    }
    Turn turn = new Turn(rules, state, "");
    turn.chooseRecord(kind, number);
    return turn.state();
  }

  /** The same state, of whose memories nothing is known but the values of {@code kept}. */
  public State forget(State state, Collection<Slot> kept) {
    Memory working = rules.unknown;
    for (Slot slot : kept) {
      working = working.with(slot, state.working().get(slot));
    }
    return state.withMemories(working, working, state.clocks());
  }

  /**
   * States that together stand for {@code state} and tell apart which other record is the first to
   * hold a transmission, so that hearing it can be followed in each: one where none does, unless
   * one certainly does, and one for each record that may.
   */
  public List<State> holders(State state, Input.TransmitterHeard heard) {
    return Hearing.holders(this, rules, state, heard);
  }

  /**
   * One state that stands for both: values that differ are unknown in it, and clocks are the later
   * ones. Empty where the states differ in anything else, so that they may behave unlike.
   */
  public Optional<State> join(State first, State second) {
    if (first.equals(second)) {
      return Optional.of(first);
    }
    if (!first.alikeBesidesMemory(second)) {
      return Optional.empty();
    }
    Clocks one = first.clocks();
    Clocks two = second.clocks();
    return Optional.of(
        first.withMemories(
            first.working().join(second.working()),
            first.committed().join(second.committed()),
            new Clocks(
                Math.max(one.idle(), two.idle()),
                Math.max(one.onScreen(), two.onScreen()),
                Math.max(one.busy(), two.busy()),
                Math.max(one.deaf(), two.deaf()),
                Math.max(one.keypadsRestart(), two.keypadsRestart()),
                Math.max(one.sincePower(), two.sincePower()))));
  }

  /**
   * Keys that the screen may give a meaning to and the keypad has, in a fixed order. Codes are
   * missing: see {@link #takesCode}.
   */
  public List<String> keys(State state, String keypad) {
    return Keys.of(rules, rules.screen(state.screen()), keypad);
  }

  /** Whether a whole code can be entered on the present screen. */
  public boolean takesCode(State state) {
    return rules.screen(state.screen()).entry().filter(Entry.Coded.class::isInstance).isPresent();
  }

  /**
   * Every value that a slot may hold, where these can be listed and are at most {@code limit};
   * otherwise empty.
   */
  public List<Value> completions(Slot slot, int limit) {
    return Completions.of(slot.field().type(), limit);
  }

  private String shownOn(State state) {
    return state.keypad().isEmpty() ? rules.description.keypads().get(0).name() : state.keypad();
  }

  private Move press(State state, Input.Press press) {
    Optional<KeypadKind> keypad = rules.description.findKeypad(press.keypad());
    Optional<Refusal> lost = lost(state, press, keypad);
    if (lost.isPresent() || keypad.isEmpty()) {
      return refused(state, lost.orElse(Refusal.NOT_ON_THIS_KEYPAD));
    }
    Turn heard = new Turn(rules, state, press.keypad());
    heard.busy = Keys.busyTenths(rules, heard, keypad.get(), press.key());
    heard.idle = 0;
    if (heard.screen.entry().filter(Entry.Hear.class::isInstance).isEmpty()) {
      heard.onScreen = 0;
    }
    return attempt(state, heard.state(), press.keypad(), turn -> Keying.press(turn, press.key()));
  }

  /** Why a press never reaches the dialogue, if it does not. */
  private Optional<Refusal> lost(State state, Input.Press press, Optional<KeypadKind> keypad) {
    if (!state.powered()) {
      return Optional.of(Refusal.NO_POWER);
    }
    if (keypad.isEmpty() || !Keys.has(rules, keypad.get(), press.key())) {
      return Optional.of(Refusal.NOT_ON_THIS_KEYPAD);
    }
    if (restartTenths(state, press.keypad()) > 0) {
      return Optional.of(Refusal.RESTARTING);
    }
    if (state.clocks().busy() > 0) {
      return Optional.of(Refusal.TOO_SOON);
    }
    if (programmingOpen(state)
        && !state.keypad().equals(press.keypad())
        && !(keypad.get().mirrors()
            && rules
                .description
                .findKeypad(state.keypad())
                .map(KeypadKind::mirrors)
                .orElse(true))) {
      return Optional.of(Refusal.OPEN_ELSEWHERE);
    }
    return Optional.empty();
  }

  private Move attempt(State before, State from, Consumer<Turn> deed) {
    return attempt(before, from, shownOn(before), deed);
  }

  private static Move refused(State state, Refusal refusal) {
    return new Move(state, List.of(), Optional.of(refusal), Optional.empty(), Optional.empty());
  }

  /**
   * Works out a turn.
   *
   * @param before the state to stay in when the turn cannot be decided
   * @param from the state that the turn starts from, and ends in when it is refused
   */
  private Move attempt(State before, State from, String keypad, Consumer<Turn> deed) {
    Turn turn = new Turn(rules, from, keypad);
    try {
      deed.accept(turn);
    } catch (Interrupted interrupted) {
      Refusal refusal = interrupted.refusal();
      if (refusal != null) {
        return refused(from, refusal);
      }
      return new Move(
          before,
          List.of(),
          Optional.empty(),
          Optional.empty(),
          Optional.ofNullable(interrupted.slot()));
    }
    return new Move(turn.state(), turn.stored(), turn.refusal(), turn.leftNow(), Optional.empty());
  }

  private Transition shown(Move move, String keypad) {
    return new Transition(
        move.state(),
        display(move.state(), keypad),
        move.stored(),
        move.refusal(),
        move.left(),
        move.needs());
  }
}
