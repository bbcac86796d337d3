package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import keenward.core.dialogue.description.Action;
import keenward.core.dialogue.description.Actions;
import keenward.core.dialogue.description.Condition;
import keenward.core.dialogue.description.Effect;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.Leaving;
import keenward.core.dialogue.description.Location;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Target;
import keenward.core.dialogue.description.Value;

/** What a search wants to know of a description as a whole, looked up once. */
final class DescriptionFacts {
  private final PanelDescription description;
  private final Map<String, Set<Value>> steering = new HashMap<>();
  private final Map<String, Set<Value>> given = new HashMap<>();
  private final List<FieldReference> repeated = new ArrayList<>();
  private final Set<String> fieldsAtLocations = new LinkedHashSet<>();
  private boolean powerWindow;

  DescriptionFacts(PanelDescription description) {
    this.description = description;
    for (Location location : description.locations()) {
      fieldsAtLocations.add(location.field());
    }
    for (Screen screen : description.screens().values()) {
      Actions.forEach(screen, this::look);
      screen.entry().ifPresent(this::look);
    }
    for (Field field : description.fields()) {
      field.onChange().forEach(this::look);
    }
  }

  /** Values of a field that the dialogue's course depends on. */
  Set<Value> steering(Field field) {
    return steering.getOrDefault(field.name(), Set.of());
  }

  /** Values that a field may get by an effect rather than by being entered. */
  Set<Value> given(Field field) {
    return given.getOrDefault(field.name(), Set.of());
  }

  /** Fields that are entered twice, the first time aside. */
  List<FieldReference> repeated() {
    return repeated;
  }

  /** Whether a way in is open only for a while after power-up. */
  boolean powerWindow() {
    return powerWindow;
  }

  /** Whether a safe way of leaving stores even what is still being typed. */
  boolean leavingStoresTyped() {
    for (Leaving leaving : description.leaving().values()) {
      if (leaving.safe() && !leaving.locks() && leaving.saves() == Leaving.Saves.TYPED_TOO) {
        return true;
      }
    }
    return false;
  }

  private void look(Entry entry) {
    Target target =
        switch (entry) {
          case Entry.Typed typed -> typed.target();
          case Entry.Coded coded -> coded.target();
          default -> new Target.Aside();
        };
    if (target instanceof Target.Repeat repeat) {
      repeated.add(repeat.field());
    }
  }

  private void look(Action action) {
    for (Action.Branch branch : action.branches()) {
      look(branch.when());
      branch.effects().forEach(this::look);
    }
  }

  private void look(Condition condition) {
    switch (condition) {
      case Condition.FieldIs is -> {
        for (String field : names(is.field())) {
          steering.computeIfAbsent(field, name -> new HashSet<>()).addAll(is.values());
        }
      }
      case Condition.SincePowerUp since -> powerWindow = true;
      case Condition.Not not -> look(not.condition());
      case Condition.All all -> all.conditions().forEach(this::look);
      case Condition.Any any -> any.conditions().forEach(this::look);
      case Condition.RecordIs is -> {
        // Depends on no field.
      }
      case Condition.Locked locked -> {
        // Depends on no field.
      }
      case Condition.OnKeypad on -> {
        // Depends on no field.
      }
    }
  }

  private void look(Effect effect) {
    switch (effect) {
      case Effect.Set set -> {
        for (String field : names(set.field())) {
          give(field, set.value());
        }
      }
      case Effect.Reset reset -> {
        for (String name : names(reset.field())) {
          description.findField(name).ifPresent(field -> give(name, field.initial()));
        }
      }
      case Effect.ResetRecord reset -> {
        for (Field field : description.fields()) {
          if (field.record().equals(reset.record())) {
            give(field.name(), field.initial());
          }
        }
      }
      case Effect.ResetAll reset -> {
        for (Field field : description.fields()) {
          if (!reset.except().contains(field.name())) {
            give(field.name(), field.initial());
          }
        }
      }
      case Effect.MoveRecord move -> {
        // Gives no field a value.
      }
      case Effect.ChooseRecord choose -> {
        // As above.
      }
      case Effect.ChooseOther choose -> {
        // As above.
      }
      case Effect.Keep keep -> {
        // As above.
      }
      case Effect.Drop drop -> {
        // As above.
      }
      case Effect.Unlock unlock -> {
        // As above.
      }
    }
  }

  private void give(String field, Value value) {
    given.computeIfAbsent(field, name -> new HashSet<>()).add(value);
  }

  /** Full names of the fields that a reference may mean. */
  Set<String> names(FieldReference reference) {
    return switch (reference) {
      case FieldReference.Named named -> Set.of(named.field());
      case FieldReference.AtLocation at -> fieldsAtLocations;
    };
  }
}
