package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Interpreter;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.machine.Stored;

/**
 * All moves from a state in which nothing is being entered that may belong to a shortest order:
 * keys with a meaning of their own, and whole entries of values that something depends on.
 */
final class Moves {
  final Task task;
  final Scope scope;
  final State state;
  final Screen screen;
  final Completion completion;
  private final List<Edge> edges = new ArrayList<>();
  private final List<Fork> forks = new ArrayList<>();

  Moves(Task task, Scope scope, State state) {
    this.task = task;
    this.scope = scope;
    this.state = state;
    Screen here = task.description.screens().get(state.screen());
    if (here == null) {
      throw new IllegalArgumentException("no screen " + state.screen());
    }
    this.screen = here;
    this.completion = new Completion(task, scope);
  }

  /** Finds them all. */
  Moves find() {
    int restart = task.interpreter.restartTenths(state, task.keypad.name());
    if (restart > 0) {
      add(from -> start(from).pause(restart));
      return this;
    }
    for (String key : screen.keys().keySet()) {
      if (has(key)) {
        add(from -> start(from).press(key));
      }
    }
    screen.entry().ifPresent(this::enter);
    screen
        .after()
        .ifPresent(
            timed -> add(from -> start(from).pause(timed.tenths() - from.clocks().onScreen())));
    if (task.facts.powerWindow() && !task.interpreter.programmingOpen(state)) {
      add(from -> start(from).cutPower());
    }
    return this;
  }

  List<Edge> edges() {
    return edges;
  }

  List<Fork> forks() {
    return forks;
  }

  private void enter(Entry entry) {
    switch (entry) {
      case Entry.Typed typed -> new DigitMoves(this).find(typed);
      case Entry.Coded coded -> new CodeMoves(this).find(coded);
      case Entry.Scroll scroll -> new ScrollMoves(this).find(scroll);
      case Entry.Menu menu -> new ScrollMoves(this).find(menu);
      case Entry.ToggleByCode toggle -> new OptionMoves(this).find(toggle);
      case Entry.ToggleByCursor toggle -> new OptionMoves(this).find(toggle);
      case Entry.Lettered lettered -> new TextMoves(this).find(lettered);
      case Entry.WordByNumber words -> new WordMoves(this).find(words);
      case Entry.WordByScroll words -> new WordMoves(this).find(words);
      case Entry.Hear hear -> new HearMoves(this).find(hear);
    }
  }

  // What the kinds of entry share

  Interpreter interpreter() {
    return task.interpreter;
  }

  boolean has(String key) {
    return !key.isEmpty() && task.keypad.keys().containsKey(key);
  }

  /** Whether a key reaches the screen's entry rather than meaning something of its own. */
  boolean reaches(String key) {
    return has(key) && !screen.keys().containsKey(key);
  }

  Run start(State from) {
    return new Run(task.interpreter, task.keypad.name(), from);
  }

  /**
   * Values that it may be of use to store into a slot: what is wanted, what steers the dialogue,
   * and what it holds where something has to be entered to get past.
   */
  List<Value> useful(Slot slot) {
    List<Value> values = new ArrayList<>();
    if (task.matters(slot)) {
      values.add(task.wanted.get(slot));
    }
    if (scope.mayChange(slot)) {
      for (Value value : task.facts.steering(slot.field())) {
        if (!values.contains(value)) {
          values.add(value);
        }
      }
    }
    Value held = state.working().get(slot);
    if (held.known() && !values.contains(held)) {
      values.add(held);
    }
    return values;
  }

  /** Adds a move that does the same whatever is unknown. */
  void add(Completion.Deed deed) {
    List<Completion.Leaf> leaves = completion.of(state, deed);
    if (leaves.isEmpty()) {
      return;
    }
    for (Completion.Leaf leaf : leaves) {
      if (!leaf.run().alive() || !allowed(leaf.run())) {
        return;
      }
    }
    Optional<Edge> joined = joined(state, leaves);
    if (joined.isPresent()) {
      edges.add(joined.get());
    } else {
      fork(leaves);
    }
  }

  /** The move that stands for all leaves, where they differ in memory only. */
  Optional<Edge> joined(State from, List<Completion.Leaf> leaves) {
    Run longest = leaves.get(0).run();
    State after = longest.state();
    for (Completion.Leaf leaf : leaves) {
      Optional<State> both = interpreter().join(after, leaf.run().state());
      if (both.isEmpty()) {
        return Optional.empty();
      }
      after = both.get();
      if (leaf.run().stored().size() > longest.stored().size()) {
        longest = leaf.run();
      }
    }
    if (longest.acts().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Edge(
            List.of(new Item.Do(from, longest.from(), longest.acts(), longest.stored(), after)),
            after,
            longest.cost()));
  }

  private void fork(List<Completion.Leaf> leaves) {
    Optional<Slot> slot = leaves.get(0).first();
    if (slot.isEmpty()
        || task.matters(slot.get())
        || (slot.get().field().byRecord() && !scope.mayChange(slot.get()))) {
      // What is wanted is set where it is entered, whatever it was; and nobody has to get past what
      // other records hold.
      return;
    }
    boolean before = task.shows(state, slot.get());
    List<Fork.Prong> prongs = new ArrayList<>();
    for (List<Completion.Leaf> alike : byFirstValue(leaves)) {
      Optional<Edge> edge = joined(state, alike);
      if (edge.isEmpty()) {
        return;
      }
      Value value = alike.get(0).value().orElse(Value.unknown());
      List<Value> values = value.known() ? List.of(value) : List.of();
      if (before) {
        prongs.add(new Fork.Prong(values, interpreter().assume(state, slot.get(), value)));
      } else {
        addProng(prongs, new Fork.Prong(values, edge.get().after()));
      }
    }
    if (toldApart(prongs)) {
      Run run = leaves.get(0).run();
      List<Item> first =
          before
              ? List.of()
              : List.of(new Item.Do(state, run.from(), run.acts(), run.stored(), run.state()));
      forks.add(new Fork(first, slot.get(), prongs, before ? 0 : run.cost()));
    }
  }

  /**
   * Adds a case, together with an earlier one where both lead to states that differ in memory only.
   */
  private void addProng(List<Fork.Prong> prongs, Fork.Prong prong) {
    for (int index = 0; index < prongs.size(); index++) {
      Fork.Prong earlier = prongs.get(index);
      Optional<State> both = interpreter().join(earlier.state(), prong.state());
      if (both.isPresent()) {
        List<Value> values = new ArrayList<>();
        if (!earlier.values().isEmpty() && !prong.values().isEmpty()) {
          values.addAll(earlier.values());
          values.addAll(prong.values());
        }
        prongs.remove(index);
        prongs.add(values.isEmpty() ? prongs.size() : index, new Fork.Prong(values, both.get()));
        return;
      }
    }
    prongs.add(prong);
  }

  /** Whether the display tells the cases apart. */
  private boolean toldApart(List<Fork.Prong> prongs) {
    Set<List<String>> texts = new HashSet<>();
    for (Fork.Prong prong : prongs) {
      List<String> lines = interpreter().display(prong.state(), task.keypad.name()).lines();
      if (lines.isEmpty() || !texts.add(lines)) {
        return false;
      }
    }
    return prongs.size() > 1;
  }

  private static List<List<Completion.Leaf>> byFirstValue(List<Completion.Leaf> leaves) {
    List<List<Completion.Leaf>> groups = new ArrayList<>();
    Optional<Value> last = Optional.empty();
    for (Completion.Leaf leaf : leaves) {
      if (groups.isEmpty() || !leaf.value().equals(last)) {
        groups.add(new ArrayList<>());
        last = leaf.value();
      }
      groups.get(groups.size() - 1).add(leaf);
    }
    return groups;
  }

  /** Whether a run stores only what it may, and gives up nothing that was stored before. */
  boolean allowed(Run run) {
    for (Stored stored : run.stored()) {
      if (!allowed(stored)) {
        return false;
      }
    }
    Memory before = run.from().working();
    Memory after = run.state().working();
    if (!before.equals(after)) {
      for (int index : after.differences(before)) {
        if (!scope.mayChange(index)) {
          return false;
        }
      }
    }
    return true;
  }

  private boolean allowed(Stored stored) {
    Slot slot = stored.slot();
    Value before = state.working().get(slot);
    if (before.certainly(stored.after())) {
      return true;
    }
    if (!scope.mayChange(slot)
        || (scope.givenUp(slot) && !stored.sideEffect() && !task.right(slot, stored.after()))) {
      return false;
    }
    if (before.known() || task.found.get(slot).known() || task.mayOverwriteUnseen(slot)) {
      return true;
    }
    // Unknown. What the plan replaces anyway, or what will mean nothing, may go by a side effect;
    // what
    // is entered must be shown.
    boolean fine =
        stored.sideEffect()
            ? task.matters(slot) || task.meaningless(slot)
            : task.shows(state, slot);
    if (!fine) {
      task.notice(slot, Reasons.consentNeeded(slot));
    }
    return fine;
  }

  /**
   * Adds a move that types over an unknown value that is shown, where typing ends as passing over
   * does: whoever finds the wanted value there passes over it.
   */
  void addTypingOver(Slot slot, Value value, Completion.Deed typing) {
    Value held = state.working().get(slot);
    if (held.known() || !task.shows(state, slot) || !held.mayBe(value)) {
      add(typing);
      return;
    }
    State same = interpreter().assume(state, slot, value);
    State other = interpreter().assume(state, slot, without(held, value));
    List<Completion.Leaf> typed = completion.of(other, typing);
    Optional<Edge> over = alive(typed) ? joined(other, typed) : Optional.empty();
    if (over.isEmpty()) {
      return;
    }
    Optional<Edge> split = Optional.empty();
    for (String key : passingKeys()) {
      List<Completion.Leaf> passed = completion.of(same, from -> start(from).press(key));
      Optional<Edge> pass = alive(passed) ? joined(same, passed) : Optional.empty();
      Optional<State> both =
          pass.flatMap(edge -> interpreter().join(edge.after(), over.get().after()));
      if (pass.isPresent()
          && both.isPresent()
          && (split.isEmpty() || pass.get().cost() < split.get().cost())) {
        split =
            Optional.of(
                new Edge(
                    List.of(
                        new Item.Split(
                            state,
                            slot,
                            List.of(
                                new Item.Case(List.of(value), same, pass.get().items()),
                                new Item.Case(List.of(), other, over.get().items())),
                            false)),
                    both.get(),
                    Math.max(pass.get().cost(), over.get().cost())));
      }
    }
    if (split.isPresent()) {
      edges.add(split.get());
    } else {
      add(typing);
    }
  }

  private boolean alive(List<Completion.Leaf> leaves) {
    for (Completion.Leaf leaf : leaves) {
      if (!leaf.run().alive() || !allowed(leaf.run())) {
        return false;
      }
    }
    return !leaves.isEmpty();
  }

  private List<String> passingKeys() {
    return interpreter().keys(state, task.keypad.name());
  }

  static Value without(Value unknown, Value value) {
    Set<Value> except = new LinkedHashSet<>();
    if (unknown instanceof Value.Unknown old) {
      except.addAll(old.except());
    }
    except.add(value);
    return new Value.Unknown(except);
  }

  /**
   * Adds what may follow once a value is entered: confirming, or leaving where that stores it too.
   */
  void addFinished(Completion.Deed entering, String confirm) {
    if (reaches(confirm)) {
      add(from -> entering.from(from).press(confirm));
    }
    addLeaving(entering);
  }

  /** Adds leaving with a value entered but not confirmed, where some way of leaving stores it. */
  void addLeaving(Completion.Deed entering) {
    if (task.facts.leavingStoresTyped()) {
      for (String key : screen.keys().keySet()) {
        if (has(key)) {
          add(from -> entering.from(from).press(key));
        }
      }
    }
  }

  void addEdge(Edge edge) {
    edges.add(edge);
  }
}
