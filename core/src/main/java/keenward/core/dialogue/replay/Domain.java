package keenward.core.dialogue.replay;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import keenward.core.dialogue.description.Action;
import keenward.core.dialogue.description.Actions;
import keenward.core.dialogue.description.Condition;
import keenward.core.dialogue.description.Effect;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.Location;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Interpreter;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;

/** What fields may hold, and which of it makes a difference. */
final class Domain {
  private static final int MOST_LISTED = 4096;

  private final Interpreter interpreter;
  private final Map<String, Set<Value>> mentioned = new HashMap<>();
  private final Map<Integer, List<Value>> listed = new HashMap<>();

  /**
   * The domains of a description's fields.
   *
   * @param planned values that the plan wants, which make a difference wherever they may be held
   */
  Domain(Interpreter interpreter, Map<Slot, Value> planned) {
    this.interpreter = interpreter;
    PanelDescription description = interpreter.description();
    for (Field field : description.fields()) {
      mention(field.name(), field.initial());
      field.onChange().forEach(this::mention);
      if (field.type() instanceof FieldType.WholeNumber number) {
        for (FieldType.Special special : number.specials()) {
          mention(field.name(), new Value.Whole(special.number()));
        }
      }
    }
    for (Screen screen : description.screens().values()) {
      Actions.forEach(screen, this::mention);
    }
    planned.forEach((slot, value) -> mention(slot.field().name(), value));
  }

  /** Everything that a slot may hold; empty where that cannot be listed. */
  List<Value> all(Slot slot) {
    return listed.computeIfAbsent(
        slot.index(),
        index -> {
          List<Value> values = interpreter.completions(slot, MOST_LISTED);
          if (values.isEmpty()) {
            return List.of();
          }
          Set<Value> all = new LinkedHashSet<>(values);
          all.addAll(mentioned.getOrDefault(slot.field().name(), Set.of()));
          return List.copyOf(all);
        });
  }

  /**
   * Values that together cover all that a slot may hold in a state: one by one where they can be
   * listed, otherwise those that are mentioned anywhere and one unknown for the rest.
   */
  List<Value> parts(State state, Slot slot) {
    Value held = state.working().get(slot);
    List<Value> parts = new ArrayList<>();
    List<Value> values = all(slot);
    if (!values.isEmpty()) {
      for (Value value : values) {
        if (held.mayBe(value)) {
          parts.add(value);
        }
      }
      return parts;
    }
    Set<Value> others = new LinkedHashSet<>();
    if (held instanceof Value.Unknown unknown) {
      others.addAll(unknown.except());
    }
    for (Value value : mentioned.getOrDefault(slot.field().name(), Set.of())) {
      if (held.mayBe(value)) {
        parts.add(value);
        others.add(value);
      }
    }
    parts.add(new Value.Unknown(others));
    return parts;
  }

  private void mention(String field, Value value) {
    mentioned.computeIfAbsent(field, name -> new LinkedHashSet<>()).add(value);
  }

  private void mention(Action action) {
    for (Action.Branch branch : action.branches()) {
      mention(branch.when());
      branch.effects().forEach(this::mention);
    }
  }

  private void mention(Effect effect) {
    if (effect instanceof Effect.Set set) {
      for (String field : names(set.field())) {
        mention(field, set.value());
      }
    }
  }

  private void mention(Condition condition) {
    switch (condition) {
      case Condition.FieldIs is -> {
        for (String field : names(is.field())) {
          is.values().forEach(value -> mention(field, value));
        }
      }
      case Condition.Not not -> mention(not.condition());
      case Condition.All all -> all.conditions().forEach(this::mention);
      case Condition.Any any -> any.conditions().forEach(this::mention);
      default -> {
        // Asks no field.
      }
    }
  }

  private Set<String> names(FieldReference reference) {
    if (reference instanceof FieldReference.Named named) {
      return Set.of(named.field());
    }
    Set<String> names = new LinkedHashSet<>();
    for (Location location : interpreter.description().locations()) {
      names.add(location.field());
    }
    return names;
  }
}
