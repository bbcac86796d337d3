package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import keenward.core.dialogue.description.Effect;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;

/** Splits states by unknown values until the interpreter can follow what is done. */
final class Completion {
  private static final int MOST_LISTED = 64;
  private static final int MOST_LEAVES = 400;
  private final Task task;
  private final Scope scope;

  Completion(Task task, Scope scope) {
    this.task = task;
    this.scope = scope;
  }

  /** Something done from a state. */
  interface Deed {
    Run from(State state);
  }

  /**
   * One of the narrower states that together stand for all that the state stood for.
   *
   * @param first the slot that was split first, if any
   * @param value what it was narrowed to
   */
  record Leaf(Optional<Slot> first, Optional<Value> value, Run run) {}

  /** All leaves; empty where they cannot be told or are too many. */
  List<Leaf> of(State state, Deed deed) {
    List<Leaf> leaves = new ArrayList<>();
    return split(state, deed, Optional.empty(), Optional.empty(), leaves, 0) ? leaves : List.of();
  }

  private boolean split(
      State state,
      Deed deed,
      Optional<Slot> first,
      Optional<Value> value,
      List<Leaf> leaves,
      int depth) {
    Run run = deed.from(state);
    if (run.needs().isEmpty()) {
      leaves.add(new Leaf(first, value, run));
      return leaves.size() <= MOST_LEAVES;
    }
    if (depth > MOST_LEAVES) {
      return false;
    }
    Slot slot = run.needs().get();
    for (Value part : parts(state, slot)) {
      if (!split(
          task.interpreter.assume(state, slot, part),
          deed,
          first.isPresent() ? first : Optional.of(slot),
          value.isPresent() ? value : Optional.of(part),
          leaves,
          depth + 1)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Values, each on its own, and the rest as one unknown, that cover all that the slot may hold.
   */
  List<Value> parts(State state, Slot slot) {
    Value held = state.working().get(slot);
    List<Value> listed = task.interpreter.completions(slot, MOST_LISTED);
    List<Value> parts = new ArrayList<>();
    if (!listed.isEmpty()) {
      for (Value value : listed) {
        if (held.mayBe(value)) {
          parts.add(value);
        }
      }
      if (!held.mayBe(slot.field().initial()) || listed.contains(slot.field().initial())) {
        return parts;
      }
      parts.add(slot.field().initial());
      return parts;
    }
    Set<Value> excluded = new LinkedHashSet<>();
    if (held instanceof Value.Unknown unknown) {
      excluded.addAll(unknown.except());
    }
    for (Value value : interesting(slot)) {
      if (held.mayBe(value)) {
        parts.add(value);
        excluded.add(value);
      }
    }
    parts.add(new Value.Unknown(excluded));
    return parts;
  }

  private Set<Value> interesting(Slot slot) {
    Field field = slot.field();
    Set<Value> values = new LinkedHashSet<>();
    if (task.matters(slot)) {
      values.add(task.wanted.get(slot));
    }
    for (Slot required : scope.required()) {
      if (required.field().name().equals(field.name())) {
        values.add(task.wanted.get(required));
      }
    }
    values.addAll(task.facts.steering(field));
    values.addAll(task.facts.given(field));
    for (Effect effect : field.onChange()) {
      if (effect instanceof Effect.Set set) {
        values.add(set.value());
      }
    }
    values.add(field.initial());
    return values;
  }
}
