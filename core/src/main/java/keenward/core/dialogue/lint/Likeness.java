package keenward.core.dialogue.lint;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import keenward.core.dialogue.description.Action;
import keenward.core.dialogue.description.Actions;
import keenward.core.dialogue.description.Condition;
import keenward.core.dialogue.description.Effect;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.LiveRecords;
import keenward.core.dialogue.description.Location;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.RecordKind;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Interpreter;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;

/**
 * Forgets what cannot matter any more and puts states together that no condition can tell apart, so
 * that trying out the dialogue comes to an end.
 */
final class Likeness {

  /** What is told apart. */
  record Key(
      String screen,
      String keypad,
      List<String> records,
      String location,
      List<String> conditions,
      List<Boolean> flags) {}

  private final Interpreter interpreter;
  private final PanelDescription description;
  private final Map<String, Set<String>> live;
  private final Map<String, Set<String>> liveRecords;
  private final List<Condition.FieldIs> fieldConditions = new ArrayList<>();
  private final List<Condition.RecordIs> recordConditions = new ArrayList<>();
  private final Map<String, Set<Integer>> turningPoints = new TreeMap<>();
  private final Map<Integer, String> places;
  private int window = -1;

  Likeness(Interpreter interpreter) {
    this.interpreter = interpreter;
    this.description = interpreter.description();
    this.live = Liveness.of(description);
    this.liveRecords = LiveRecords.of(description);
    this.places = placesOf(description);
    for (Screen screen : description.screens().values()) {
      Actions.forEach(screen, this::collect);
    }
    for (Condition.RecordIs is : recordConditions) {
      turningPoints.computeIfAbsent(is.record(), any -> new TreeSet<>()).add(is.number());
    }
  }

  private void collect(Action action) {
    for (Action.Branch branch : action.branches()) {
      collect(branch.when());
      for (Effect effect : branch.effects()) {
        if (effect instanceof Effect.MoveRecord move && !move.wraps()) {
          description
              .findRecord(move.record())
              .ifPresent(kind ->
                  turningPoints
                      .computeIfAbsent(kind.name(), any -> new TreeSet<>())
                      .addAll(List.of(kind.first(), kind.last())));
        }
      }
    }
  }

  private void collect(Condition condition) {
    switch (condition) {
      case Condition.FieldIs is -> {
        if (!fieldConditions.contains(is)) {
          fieldConditions.add(is);
        }
      }
      case Condition.RecordIs is -> {
        if (!recordConditions.contains(is)) {
          recordConditions.add(is);
        }
      }
      case Condition.SincePowerUp since -> window = Math.max(window, since.withinTenths());
      case Condition.Not not -> collect(not.condition());
      case Condition.All all -> all.conditions().forEach(this::collect);
      case Condition.Any any -> any.conditions().forEach(this::collect);
      case Condition.Locked locked -> {
        // A flag of the key anyway.
      }
      case Condition.OnKeypad on -> {
        // The keypad is part of the key anyway.
      }
    }
  }

  /** Values of a field that some condition asks for. */
  List<Value> askedFor(Field field) {
    List<Value> values = new ArrayList<>();
    for (Condition.FieldIs is : fieldConditions) {
      if (is.field().equals(new FieldReference.Named(field.name()))) {
        values.addAll(is.values());
      }
    }
    return values;
  }

  /**
   * The same state without what decides nothing from here on: values, and which record is chosen.
   */
  State essence(State state) {
    List<Slot> kept = new ArrayList<>();
    for (String field : live.getOrDefault(state.screen(), Set.of())) {
      interpreter.slot(state, new FieldReference.Named(field)).ifPresent(kept::add);
    }
    State reduced = interpreter.forget(state, kept);
    Set<String> needed = liveRecords.getOrDefault(state.screen(), Set.of());
    for (RecordKind kind : description.records()) {
      if (!needed.contains(kind.name())) {
        reduced = interpreter.chooseRecord(reduced, kind.name(), kind.first());
      }
    }
    return reduced;
  }

  /**
   * States that repeating the same thing for record after record leads to: the same with a record
   * beside a number where moving on turns out differently.
   */
  List<State> further(State state) {
    List<State> states = new ArrayList<>();
    turningPoints.forEach((name, numbers) -> {
      RecordKind kind = description.findRecord(name).orElseThrow();
      if (!beside(numbers, interpreter.record(state, name))) {
        for (int number : numbers) {
          for (int beside : new int[] {number - 1, number + 1}) {
            if (kind.contains(beside)) {
              states.add(interpreter.chooseRecord(state, name, beside));
            }
          }
        }
      }
    });
    return states;
  }

  private static boolean beside(Set<Integer> numbers, int number) {
    return numbers.contains(number) || numbers.contains(number - 1) || numbers.contains(number + 1);
  }

  Key key(State state) {
    List<String> records = new ArrayList<>();
    turningPoints.forEach((kind, numbers) -> {
      int number = interpreter.record(state, kind);
      records.add(beside(numbers, number) ? Integer.toString(number) : "between");
    });
    List<String> conditions = new ArrayList<>();
    for (Condition.FieldIs is : fieldConditions) {
      conditions.add(
          interpreter
              .slot(state, is.field())
              .map(slot -> judged(is, state.working().get(slot)))
              .orElse(""));
    }
    for (Condition.RecordIs is : recordConditions) {
      conditions.add(Boolean.toString(interpreter.record(state, is.record()) == is.number()));
    }
    return new Key(
        state.screen(),
        state.keypad(),
        records,
        places.getOrDefault(state.location(), ""),
        conditions,
        List.of(
            state.powered(),
            state.locked(),
            state.clocks().deaf() > 0,
            state.clocks().keypadsRestart() > 0,
            state.clocks().sincePower() <= window,
            state.aside().isEmpty(),
            state.other() >= 0));
  }

  private static String judged(Condition.FieldIs is, Value held) {
    boolean possible = false;
    for (Value value : is.values()) {
      if (held.certainly(value)) {
        return "true";
      }
      possible |= held.mayBe(value);
    }
    return possible ? "open" : "false";
  }

  /** Locations of one field on one screen are alike but for the first and the last of them. */
  private static Map<Integer, String> placesOf(PanelDescription description) {
    Map<String, List<Integer>> groups = new TreeMap<>();
    for (Location location : description.locations()) {
      groups
          .computeIfAbsent(Trials.group(location), any -> new ArrayList<>())
          .add(location.number());
    }
    Map<Integer, String> places = new HashMap<>();
    groups.forEach((group, numbers) -> {
      for (int place = 0; place < numbers.size(); place++) {
        String first = place == 0 ? " first" : "";
        String last = place == numbers.size() - 1 ? " last" : "";
        places.put(numbers.get(place), group + first + last);
      }
    });
    return places;
  }
}
