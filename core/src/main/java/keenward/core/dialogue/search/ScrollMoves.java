package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.ShownForm;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.order.Act;
import keenward.core.dialogue.order.Instruction;

/** Moves on a screen where something is scrolled: a field's value, or a menu. */
final class ScrollMoves {
  /** Longest list that is worth scrolling through. */
  static final int MOST_VALUES = 2000;

  private final Moves moves;

  ScrollMoves(Moves moves) {
    this.moves = moves;
  }

  void find(Entry.Menu menu) {
    if (!moves.reaches(menu.confirm())) {
      return;
    }
    for (int item = 0; item < menu.items().size(); item++) {
      Optional<Turns> turns =
          turns(menu.next(), menu.previous(), menu.wraps(), 0, item, menu.items().size());
      turns.ifPresent(found ->
          moves.add(
              from -> moves.start(from).press(found.key(), found.times()).press(menu.confirm())));
    }
  }

  void find(Entry.Scroll entry) {
    if (moves.reaches(entry.confirm())) {
      moves.add(from -> moves.start(from).press(entry.confirm()));
    }
    Optional<Slot> slot = moves.interpreter().slot(moves.state, entry.field());
    if (slot.isEmpty()) {
      return;
    }
    List<Value> values = moves.interpreter().completions(slot.get(), MOST_VALUES);
    Value held = moves.state.working().get(slot.get());
    if (held.known()) {
      for (Value value : moves.useful(slot.get())) {
        turns(entry, values, held, value)
            .ifPresent(turns ->
                moves.addFinished(
                    from -> moves.start(from).press(turns.key(), turns.times()), entry.confirm()));
      }
    } else if (moves.task.matters(slot.get()) && moves.reaches(entry.confirm())) {
      unknown(entry, slot.get(), values, held);
    }
  }

  /** A key pressed a number of times. */
  record Turns(String key, int times) {}

  private Optional<Turns> turns(Entry.Scroll entry, List<Value> values, Value held, Value value) {
    int to = values.indexOf(value);
    if (to < 0 || value.equals(held)) {
      return Optional.empty();
    }
    return turns(
        entry.next(), entry.previous(), entry.wraps(), values.indexOf(held), to, values.size());
  }

  /** The shorter way round; from -1 the first key leads to the first or the last. */
  private Optional<Turns> turns(
      String next, String previous, boolean wraps, int from, int to, int size) {
    int onward = to - from;
    int back = from < 0 ? size - to : from - to;
    if (from >= 0 && wraps) {
      onward = onward < 0 ? onward + size : onward;
      back = back < 0 ? back + size : back;
    }
    boolean mayGoOn = onward >= 0 && moves.reaches(next);
    boolean mayGoBack = back >= 0 && moves.reaches(previous);
    if (to == from) {
      return Optional.of(new Turns(next, 0));
    }
    if (mayGoOn && (!mayGoBack || onward <= back)) {
      return Optional.of(new Turns(next, onward));
    }
    return mayGoBack ? Optional.of(new Turns(previous, back)) : Optional.empty();
  }

  // A value that is not known

  private void unknown(Entry.Scroll entry, Slot slot, List<Value> values, Value held) {
    Value wanted = moves.task.wanted.get(slot);
    if (!values.contains(wanted)) {
      return;
    }
    if (!moves.task.shows(moves.state, slot) || !toldApart(slot)) {
      moves.task.notice(slot, Reasons.notShown(slot));
      return;
    }
    List<Completion.Leaf> leaves = new ArrayList<>();
    Map<String, List<Value>> origins = new LinkedHashMap<>();
    Map<String, Integer> longest = new LinkedHashMap<>();
    Optional<State> reached = Optional.empty();
    for (Value value : moves.task.mayHold(slot)) {
      if (!held.mayBe(value)) {
        continue;
      }
      Optional<Turns> turns =
          value.equals(wanted)
              ? Optional.of(new Turns(entry.next(), 0))
              : turns(entry, values, value, wanted);
      if (turns.isEmpty()) {
        return;
      }
      State assumed = moves.interpreter().assume(moves.state, slot, value);
      for (Completion.Leaf leaf :
          moves.completion.of(
              assumed,
              from ->
                  moves
                      .start(from)
                      .press(turns.get().key(), turns.get().times())
                      .press(entry.confirm()))) {
        if (!leaf.run().alive() || !moves.allowed(leaf.run())) {
          return;
        }
        leaves.add(leaf);
      }
      if (turns.get().times() > 0) {
        origins.computeIfAbsent(turns.get().key(), key -> new ArrayList<>()).add(value);
        longest.merge(turns.get().key(), turns.get().times(), Math::max);
        reached =
            Optional.of(moves.start(assumed).press(turns.get().key(), turns.get().times()).state());
      }
    }
    if (leaves.isEmpty() || reached.isEmpty()) {
      return;
    }
    add(entry, slot, wanted, leaves, origins, longest, reached.get());
  }

  private void add(
      Entry.Scroll entry,
      Slot slot,
      Value wanted,
      List<Completion.Leaf> leaves,
      Map<String, List<Value>> origins,
      Map<String, Integer> longest,
      State reached) {
    Optional<Edge> joined = moves.joined(moves.state, leaves);
    if (joined.isEmpty()) {
      return;
    }
    List<Instruction.Way> ways = new ArrayList<>();
    int most = 0;
    for (Map.Entry<String, List<Value>> origin : origins.entrySet()) {
      int times = longest.getOrDefault(origin.getKey(), 0);
      most = Math.max(most, times);
      ways.add(
          new Instruction.Way(new Act.Press(origin.getKey(), 1, 0, ""), origin.getValue(), times));
    }
    Run confirm = moves.start(reached).press(entry.confirm());
    State after = joined.get().after();
    moves.addEdge(
        new Edge(
            List.of(
                new Item.Scroll(moves.state, slot, wanted, ways, reached),
                new Item.Do(
                    reached,
                    longestOf(leaves).from(),
                    List.of(new Act.Press(entry.confirm(), 1, 0, "")),
                    longestOf(leaves).stored(),
                    after)),
            after,
            Cost.of(most, most * moves.task.keypad.lagTenths()) + confirm.cost()));
  }

  private static Run longestOf(List<Completion.Leaf> leaves) {
    Run longest = leaves.get(0).run();
    for (Completion.Leaf leaf : leaves) {
      if (leaf.run().stored().size() > longest.stored().size()) {
        longest = leaf.run();
      }
    }
    return longest;
  }

  private boolean toldApart(Slot slot) {
    Set<String> texts = new HashSet<>();
    for (Value value : moves.task.mayHold(slot)) {
      if (!texts.add(ShownForm.of(slot.field().type(), value, 0))) {
        return false;
      }
    }
    return true;
  }
}
