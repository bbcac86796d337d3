package keenward.core.dialogue.prepare;

import static java.util.Objects.requireNonNull;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeSet;
import keenward.core.dialogue.description.Action;
import keenward.core.dialogue.description.Actions;
import keenward.core.dialogue.description.Condition;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Input;
import keenward.core.dialogue.machine.Interpreter;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.machine.Stored;
import keenward.core.dialogue.machine.Transition;
import org.jgrapht.alg.interfaces.ShortestPathAlgorithm;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;

/**
 * Every state that any keys lead to, with JGraphT's Dijkstra for the shortest way through them.
 * Knows no moves but single keys and waits.
 */
final class ExplicitGraph {
  /** Weight of one act; tenths of a second weigh one. */
  static final long ACT = 1_000_000;

  private static final int MOST_STATES = 6000;

  private final Interpreter interpreter;
  private final String keypad;
  private final Memory found;
  private final Memory target;
  private final Map<String, List<Slot>> units = new HashMap<>();
  private final Set<String> steering = new HashSet<>();

  ExplicitGraph(Interpreter interpreter, String keypad, Memory found, Map<Slot, Value> planned) {
    this.interpreter = interpreter;
    this.keypad = keypad;
    this.found = found;
    Memory memory = found;
    for (Map.Entry<Slot, Value> entry : planned.entrySet()) {
      memory = memory.with(entry.getKey(), entry.getValue());
    }
    this.target = memory;
    for (Screen screen : interpreter.description().screens().values()) {
      Actions.forEach(screen, this::look);
    }
    for (Slot slot : interpreter.layout().slots()) {
      units.computeIfAbsent(unit(slot), name -> new ArrayList<>()).add(slot);
    }
  }

  private static String unit(Slot slot) {
    return slot.field().record() + slot.record();
  }

  /** How short the shortest order is; empty where there is none. */
  record Answer(boolean tooLarge, OptionalLong shortest, int states) {}

  Answer shortest() {
    SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge> graph =
        new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
    Map<State, Integer> vertices = new HashMap<>();
    Deque<State> waiting = new ArrayDeque<>();
    State start = interpreter.start(found);
    int goal = -1;
    graph.addVertex(goal);
    vertices.put(start, 0);
    graph.addVertex(0);
    waiting.add(start);
    while (!waiting.isEmpty()) {
      State state = waiting.remove();
      int from = requireNonNull(vertices.get(state));
      if (done(state)) {
        graph.setEdgeWeight(graph.addEdge(from, goal), 0);
        continue;
      }
      for (Step step : steps(state)) {
        Integer to = vertices.get(step.to());
        if (to == null) {
          to = vertices.size();
          if (to >= MOST_STATES) {
            return new Answer(true, OptionalLong.empty(), to);
          }
          vertices.put(step.to(), to);
          graph.addVertex(to);
          waiting.add(step.to());
        }
        connect(graph, from, to, step.weight());
      }
    }
    ShortestPathAlgorithm<Integer, DefaultWeightedEdge> dijkstra =
        new DijkstraShortestPath<>(graph);
    double weight = dijkstra.getPathWeight(0, goal);
    return new Answer(
        false,
        Double.isInfinite(weight) ? OptionalLong.empty() : OptionalLong.of((long) weight),
        vertices.size());
  }

  private static void connect(
      SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge> graph,
      int from,
      int to,
      long weight) {
    if (from == to) {
      return;
    }
    DefaultWeightedEdge edge = graph.getEdge(from, to);
    if (edge == null) {
      graph.setEdgeWeight(graph.addEdge(from, to), (double) weight);
    } else if (graph.getEdgeWeight(edge) > weight) {
      graph.setEdgeWeight(edge, (double) weight);
    }
  }

  boolean done(State state) {
    return !interpreter.programmingOpen(state)
        && state.left().filter(left -> left.safe() && !left.locked()).isPresent()
        && state.committed().equals(target)
        && state.working().equals(target);
  }

  private record Step(State to, long weight) {}

  private List<Step> steps(State state) {
    List<Step> steps = new ArrayList<>();
    for (String key : interpreter.keys(state, keypad)) {
      Transition transition = interpreter.pressAndWait(state, keypad, key);
      if (fine(state, transition)) {
        int lag = interpreter.description().findKeypad(keypad).orElseThrow().lagTenths();
        steps.add(new Step(transition.state(), ACT + lag));
      }
    }
    for (int tenths : waits(state)) {
      Transition transition = interpreter.apply(state, new Input.TimePasses(tenths));
      if (fine(state, transition)) {
        steps.add(new Step(transition.state(), ACT + tenths));
      }
    }
    return steps;
  }

  /** Times after which something happens by itself. */
  Set<Integer> waits(State state) {
    TreeSet<Integer> waits = new TreeSet<>();
    Screen screen = requireNonNull(interpreter.description().screens().get(state.screen()));
    screen.after().ifPresent(timed -> waits.add(timed.tenths() - state.clocks().onScreen()));
    int pause = interpreter.description().keyMeanings().tapPauseTenths();
    if (pause > 0
        && !state.typing().pending().isEmpty()
        && screen.entry().filter(Entry.Lettered.class::isInstance).isPresent()) {
      waits.add(pause - state.clocks().idle());
    }
    int restart = interpreter.restartTenths(state, keypad);
    if (restart > 0) {
      waits.add(restart);
    }
    waits.removeIf(tenths -> tenths <= 0);
    return waits;
  }

  boolean fine(State before, Transition transition) {
    if (transition.refusal().isPresent()
        || transition.left().filter(left -> !left.safe() || left.locked()).isPresent()) {
      return false;
    }
    for (Stored stored : transition.stored()) {
      boolean changes = !stored.before().equals(stored.after());
      if (changes && !mayChange(unit(stored.slot()))) {
        return false;
      }
      if (changes && !stored.sideEffect() && !sensible(before, stored)) {
        return false;
      }
    }
    return oneAtATime(before.working(), transition.state().working());
  }

  /**
   * Orders enter no value that is neither wanted nor steers the dialogue; options that are stored
   * one by one pass through others.
   */
  private boolean sensible(State before, Stored stored) {
    Screen screen = requireNonNull(interpreter.description().screens().get(before.screen()));
    return stored.after().equals(target.get(stored.slot()))
        || steering.contains(stored.slot().field().name() + "=" + stored.after())
        || (screen.entry().isPresent()
            && screen.entry().get() instanceof Entry.ToggleByCode toggle
            && toggle.atOnce());
  }

  private void look(Action action) {
    for (Action.Branch branch : action.branches()) {
      if (branch.when() instanceof Condition.FieldIs is
          && is.field() instanceof FieldReference.Named named) {
        is.values().forEach(value -> steering.add(named.field() + "=" + value));
      }
    }
  }

  /** Only groups in which something is planned to change may be changed at all. */
  private boolean mayChange(String unit) {
    for (Slot slot : requireNonNull(units.get(unit))) {
      if (!found.get(slot).equals(target.get(slot))) {
        return true;
      }
    }
    return false;
  }

  /** No key changes two groups, nor one while another is begun and not finished. */
  private boolean oneAtATime(Memory before, Memory after) {
    Set<String> changed = new HashSet<>();
    for (int index : before.differences(after)) {
      changed.add(unit(interpreter.layout().slot(index)));
    }
    if (changed.isEmpty()) {
      return true;
    }
    for (Map.Entry<String, List<Slot>> unit : units.entrySet()) {
      boolean begun = false;
      boolean wrong = false;
      for (Slot slot : unit.getValue()) {
        begun |= !before.get(slot).equals(found.get(slot));
        wrong |= !before.get(slot).equals(target.get(slot));
      }
      if (begun && wrong && !changed.contains(unit.getKey())) {
        return false;
      }
    }
    return changed.size() == 1;
  }

  /** Whether nothing is planned to change. */
  boolean nothingToDo() {
    return found.equals(target);
  }
}
