package keenward.core.dialogue.lint;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import keenward.core.dialogue.description.Action;
import keenward.core.dialogue.description.Actions;
import keenward.core.dialogue.description.Condition;
import keenward.core.dialogue.description.Destination;
import keenward.core.dialogue.description.Effect;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.Leaving;
import keenward.core.dialogue.description.Location;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Target;

/**
 * For each screen, the fields whose present value may still decide where the dialogue goes. A value
 * is of no more concern once another record is chosen: whatever that holds is another question.
 */
final class Liveness {
  private final PanelDescription description;
  private final Map<String, Set<String>> live = new HashMap<>();

  private Liveness(PanelDescription description) {
    this.description = description;
  }

  /** The live fields by screen. */
  static Map<String, Set<String>> of(PanelDescription description) {
    Liveness liveness = new Liveness(description);
    description.screens().keySet().forEach(name -> liveness.live.put(name, new TreeSet<>()));
    boolean changed = true;
    while (changed) {
      changed = false;
      for (Screen screen : description.screens().values()) {
        changed |= liveness.grow(screen);
      }
    }
    return liveness.live;
  }

  private boolean grow(Screen screen) {
    Set<String> grown = new TreeSet<>();
    Optional<Target> target =
        screen
            .entry()
            .flatMap(entry ->
                entry instanceof Entry.Typed typed
                    ? Optional.of(typed.target())
                    : Optional.empty());
    Actions.forEach(
        screen,
        action -> {
          Set<String> fields = new TreeSet<>();
          for (Action.Branch branch : action.branches()) {
            fields.addAll(after(screen, branch));
            addFields(branch.when(), fields);
          }
          if (isThen(screen, action) && target.isPresent()) {
            forgetTarget(target.get(), fields);
          }
          grown.addAll(fields);
        });
    return live.getOrDefault(screen.name(), grown).addAll(grown);
  }

  private static boolean isThen(Screen screen, Action action) {
    return screen
        .entry()
        .map(entry -> entry instanceof Entry.Typed typed && typed.then().equals(action))
        .orElse(false);
  }

  private void forgetTarget(Target target, Set<String> fields) {
    if (target instanceof Target.ToRecord to) {
      forgetRecord(to.record(), fields);
    } else if (target instanceof Target.ToLocation) {
      fields.removeIf(name -> byRecord(name));
    }
  }

  private boolean byRecord(String field) {
    return description.findField(field).map(Field::byRecord).orElse(false);
  }

  private void forgetRecord(String record, Set<String> fields) {
    fields.removeIf(name ->
        description.findField(name).map(each -> each.record().equals(record)).orElse(false));
  }

  private Set<String> after(Screen screen, Action.Branch branch) {
    Set<String> fields = new TreeSet<>();
    switch (branch.destination()) {
      case Destination.ToScreen to -> fields.addAll(live.getOrDefault(to.screen(), Set.of()));
      case Destination.Stay stay -> fields.addAll(live.getOrDefault(screen.name(), Set.of()));
      case Destination.ToLocation to -> addLocations(fields);
      case Destination.ToNeighbour to -> {
        addLocations(fields);
        fields.removeIf(this::byRecord);
      }
      case Destination.Leave leave -> {
        Leaving way = description.leaving().get(leave.way());
        if (way != null) {
          fields.addAll(live.getOrDefault(way.goesTo(), Set.of()));
        }
        fields.removeIf(this::byRecord);
      }
    }
    for (Effect effect : branch.effects()) {
      switch (effect) {
        case Effect.MoveRecord move -> forgetRecord(move.record(), fields);
        case Effect.ChooseRecord choose -> forgetRecord(choose.record(), fields);
        case Effect.ChooseOther choose -> forgetRecord(choose.record(), fields);
        default -> {
          // Stores and commits leave the record as it is.
        }
      }
    }
    return fields;
  }

  private void addLocations(Set<String> fields) {
    for (Location location : description.locations()) {
      fields.addAll(live.getOrDefault(location.screen(), Set.of()));
    }
  }

  private static void addFields(Condition condition, Set<String> fields) {
    switch (condition) {
      case Condition.FieldIs is -> {
        if (is.field() instanceof FieldReference.Named named) {
          fields.add(named.field());
        }
      }
      case Condition.Not not -> addFields(not.condition(), fields);
      case Condition.All all -> all.conditions().forEach(part -> addFields(part, fields));
      case Condition.Any any -> any.conditions().forEach(part -> addFields(part, fields));
      default -> {
        // Asks about no field.
      }
    }
  }
}
