package keenward.core.dialogue.lint;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Departure;
import keenward.core.dialogue.machine.Input;
import keenward.core.dialogue.machine.Interpreter;
import keenward.core.dialogue.machine.Move;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.machine.Stored;

/**
 * The states that the panel can get into, whatever its memory holds, found by trying everything
 * out. A value is settled, one way after the other, only where it decides something.
 */
final class Exploration {

  /**
   * A state that was reached.
   *
   * @param state the state, the first of its like
   * @param parent index of the node it was reached from, or -1
   * @param words the trial that led here
   * @param tried trials from here
   */
  record Node(State state, int parent, List<String> words, List<Tried> tried) {}

  /**
   * A trial and what may come of it, depending on what the memory holds.
   *
   * @param chosen whether a person can do this on purpose, at once and without harm
   */
  record Tried(boolean chosen, List<Outcome> outcomes) {}

  /** What may come of a trial. */
  record Outcome(int to, Optional<Departure> left, List<Stored> stored) {}

  /** A trial half done. */
  private record Progressing(
      State state, int done, Optional<Departure> left, List<Stored> stored) {}

  private static final int MOST_VALUES = 64;

  /** Inputs tried before giving up; the shipped panels need some hundred thousand. */
  private static final int MOST_INPUTS = 4_000_000;

  private final Interpreter interpreter;
  private final Likeness likeness;
  private final List<Node> nodes = new ArrayList<>();
  private final Map<Likeness.Key, Integer> indices = new HashMap<>();
  private boolean complete = true;
  private int inputs;

  private Exploration(PanelDescription description) {
    this.interpreter = new Interpreter(description);
    this.likeness = new Likeness(interpreter);
  }

  static Exploration of(PanelDescription description, int mostNodes) {
    Exploration exploration = new Exploration(description);
    exploration.run(mostNodes);
    return exploration;
  }

  List<Node> nodes() {
    return nodes;
  }

  boolean complete() {
    return complete;
  }

  Interpreter interpreter() {
    return interpreter;
  }

  private void run(int mostNodes) {
    node(interpreter.start(interpreter.layout().unknown()), -1, List.of());
    for (int next = 0; next < nodes.size(); next++) {
      if (nodes.size() >= mostNodes || inputs >= MOST_INPUTS) {
        complete = false;
        return;
      }
      for (Trial trial : Trials.of(interpreter, nodes.get(next).state())) {
        follow(next, trial);
      }
    }
  }

  private int node(State reached, int parent, List<String> words) {
    State state = likeness.essence(reached);
    Likeness.Key key = likeness.key(state);
    Integer known = indices.get(key);
    if (known != null) {
      return known;
    }
    int index = nodes.size();
    nodes.add(new Node(state, parent, words, new ArrayList<>()));
    indices.put(key, index);
    List<String> repeated = new ArrayList<>(words);
    repeated.add("(and so on)");
    for (State further : likeness.further(state)) {
      node(further, parent, repeated);
    }
    return index;
  }

  private void follow(int from, Trial trial) {
    List<Outcome> outcomes = new ArrayList<>();
    Deque<Progressing> open = new ArrayDeque<>();
    open.add(new Progressing(nodes.get(from).state(), 0, Optional.empty(), List.of()));
    while (!open.isEmpty() && inputs < MOST_INPUTS) {
      Progressing at = open.pop();
      if (at.done() == trial.inputs().size()) {
        int to = node(at.state(), from, words(trial));
        Outcome outcome = new Outcome(to, at.left(), at.stored());
        if (!outcomes.contains(outcome)) {
          outcomes.add(outcome);
        }
        continue;
      }
      Input input = trial.inputs().get(at.done());
      Move move = move(at.state(), input);
      inputs++;
      if (move.needs().isPresent()) {
        Slot slot = move.needs().get();
        for (State settled : settled(at.state(), slot, input)) {
          open.push(new Progressing(settled, at.done(), at.left(), at.stored()));
        }
        continue;
      }
      List<Stored> stored = new ArrayList<>(at.stored());
      stored.addAll(move.stored());
      open.push(new Progressing(move.state(), at.done() + 1, at.left().or(move::left), stored));
    }
    nodes.get(from).tried().add(new Tried(trial.chosen(), outcomes));
  }

  /** The states in which the value of a slot is settled, one way each. */
  private List<State> settled(State state, Slot slot, Input input) {
    if (slot.field().type() instanceof FieldType.Serial
        && input instanceof Input.TransmitterHeard heard) {
      return settledSerials(state, slot, new Value.Text(heard.serial()));
    }
    List<State> states = new ArrayList<>();
    for (Value value : possible(slot, state.working().get(slot), input)) {
      states.add(interpreter.assume(state, slot, value));
    }
    return states;
  }

  /**
   * Who holds a transmitter that is heard: nobody else, or this slot. Which of the others it is
   * decides nothing, so one of them stands for all.
   */
  private List<State> settledSerials(State state, Slot slot, Value heard) {
    boolean first = true;
    State nobody = state;
    for (Slot other : interpreter.layout().slots()) {
      if (other.field().equals(slot.field())) {
        Value held = state.working().get(other);
        first &= !held.equals(heard);
        if (!held.known()) {
          nobody =
              interpreter.assume(
                  nobody, other, Representative.other(slot.field().type(), Set.of(heard)));
        }
      }
    }
    return first ? List.of(nobody, interpreter.assume(state, slot, heard)) : List.of(nobody);
  }

  /**
   * The ways to settle an unknown value: each that it may have, where they can be listed; otherwise
   * those that somebody asks for, and one that stands for all others.
   */
  private List<Value> possible(Slot slot, Value held, Input input) {
    Set<Value> values = new LinkedHashSet<>(interpreter.completions(slot, MOST_VALUES));
    boolean listed = !values.isEmpty();
    if (!listed) {
      values.addAll(likeness.askedFor(slot.field()));
      values.add(slot.field().initial());
      asked(slot, input).ifPresent(values::add);
    }
    values.removeIf(value -> !held.mayBe(value));
    if (!listed) {
      values.add(Representative.other(slot.field().type(), values));
    }
    return List.copyOf(values);
  }

  /** The value that an input compares a slot with. */
  private static Optional<Value> asked(Slot slot, Input input) {
    return switch (input) {
      case Input.TransmitterHeard heard when slot.field().type() instanceof FieldType.Serial ->
          Optional.of(new Value.Text(heard.serial()));
      case Input.Press press when press.key().startsWith("code:") ->
          Optional.of(new Value.Secret(press.key().substring("code:".length())));
      default -> Optional.empty();
    };
  }

  private Move move(State state, Input input) {
    return input instanceof Input.Press press
        ? interpreter.moveAndWait(state, press.keypad(), press.key())
        : interpreter.move(state, input);
  }

  private static List<String> words(Trial trial) {
    List<String> words = new ArrayList<>();
    for (Input input : trial.inputs()) {
      words.add(
          switch (input) {
            case Input.Press press -> press.key();
            case Input.TimePasses time -> "wait " + time.tenths() / 10 + " s";
            case Input.TransmitterHeard heard -> "transmitter heard " + heard.part();
            case Input.PowerLost lost -> "power off";
            case Input.PowerBack back -> "power on";
          });
    }
    return words;
  }

  /** For each screen that was reached, the inputs that lead there. */
  Map<String, List<String>> waysTo() {
    Map<String, List<String>> ways = new LinkedHashMap<>();
    for (int index = 0; index < nodes.size(); index++) {
      if (!ways.containsKey(nodes.get(index).state().screen())) {
        ways.put(nodes.get(index).state().screen(), way(index));
      }
    }
    return ways;
  }

  /** The inputs that lead to a node. */
  List<String> way(int index) {
    List<List<String>> steps = new ArrayList<>();
    for (int at = index; at >= 0; at = nodes.get(at).parent()) {
      steps.add(nodes.get(at).words());
    }
    List<String> way = new ArrayList<>();
    for (int step = steps.size() - 1; step >= 0; step--) {
      way.addAll(steps.get(step));
    }
    return List.copyOf(way);
  }
}
