package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import keenward.core.dialogue.description.Action;
import keenward.core.dialogue.description.Effect;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.Location;
import keenward.core.dialogue.description.RecordKind;
import keenward.core.dialogue.description.Target;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.TypedForm;

/** Moves on a screen that takes digits. */
final class DigitMoves {
  /**
   * Where there are more records than this, an order goes to those that it is about and no others.
   */
  private static final int FEW_RECORDS = 4;

  private final Moves moves;

  DigitMoves(Moves moves) {
    this.moves = moves;
  }

  void find(Entry.Typed entry) {
    if (moves.reaches(entry.confirm())) {
      moves.add(from -> moves.start(from).press(entry.confirm()));
    }
    switch (entry.target()) {
      case Target.ToField to -> slot(to.field()).ifPresent(slot -> values(entry, slot));
      case Target.ToRecord to -> {
        for (int number : records(to.record(), entry.then())) {
          numbers(entry, number);
        }
      }
      case Target.ToLocation to -> {
        for (int number : locations()) {
          numbers(entry, number);
        }
      }
      case Target.ToItem to -> {
        for (String typed : to.items().keySet()) {
          type(entry, typed);
        }
      }
      case Target.Aside to -> {
        for (FieldReference field : moves.task.facts.repeated()) {
          slot(field)
              .ifPresent(slot -> {
                for (Value value : moves.useful(slot)) {
                  TypedForm.write(slot.field().type(), value)
                      .ifPresent(typed -> type(entry, typed));
                }
              });
        }
      }
      case Target.Repeat to -> {
        if (!moves.state.aside().isEmpty()) {
          slot(to.field())
              .ifPresent(slot ->
                  TypedForm.read(slot.field().type(), moves.state.aside())
                      .ifPresent(value -> over(entry, slot, value, moves.state.aside())));
        }
      }
      case Target.Check to ->
          slot(to.field())
              .ifPresent(slot ->
                  TypedForm.write(slot.field().type(), moves.state.working().get(slot))
                      .ifPresent(typed -> type(entry, typed)));
    }
  }

  private Optional<Slot> slot(FieldReference field) {
    return moves.interpreter().slot(moves.state, field);
  }

  private void values(Entry.Typed entry, Slot slot) {
    for (Value value : moves.useful(slot)) {
      for (String typed : forms(slot, value, entry)) {
        over(entry, slot, value, typed);
      }
    }
  }

  /** Ways to write a value: as it is, and with leading zeros where it is a number. */
  private static Set<String> forms(Slot slot, Value value, Entry.Typed entry) {
    Set<String> forms = new LinkedHashSet<>();
    Optional<String> shortest = TypedForm.write(slot.field().type(), value);
    if (shortest.isPresent()) {
      forms.add(shortest.get());
      if (slot.field().type() instanceof FieldType.WholeNumber) {
        StringBuilder padded = new StringBuilder(shortest.get());
        while (padded.length() < entry.most()) {
          padded.insert(0, '0');
          if (TypedForm.read(slot.field().type(), padded.toString())
              .filter(value::equals)
              .isPresent()) {
            forms.add(padded.toString());
          }
        }
      }
    }
    forms.removeIf(form -> form.length() < entry.least() || form.length() > entry.most());
    return forms;
  }

  private void numbers(Entry.Typed entry, int number) {
    StringBuilder typed = new StringBuilder(Integer.toString(number));
    while (typed.length() < entry.least()) {
      typed.insert(0, '0');
    }
    type(entry, typed.toString());
    if (entry.advances() && typed.length() < entry.most()) {
      while (typed.length() < entry.most()) {
        typed.insert(0, '0');
      }
      type(entry, typed.toString());
    }
  }

  private List<Integer> records(String kind, Action then) {
    Set<Integer> numbers = new LinkedHashSet<>(moves.scope.records(kind));
    numbers.add(moves.interpreter().record(moves.state, kind));
    RecordKind records = moves.task.description.findRecord(kind).orElseThrow();
    if (records.size() <= FEW_RECORDS) {
      for (int number = records.first(); number <= records.last(); number++) {
        numbers.add(number);
      }
    } else if (movesOn(then)) {
      // The number typed is not where it leads: its neighbours may be.
      for (int number : List.copyOf(numbers)) {
        numbers.add(number == records.first() ? records.last() : number - 1);
        numbers.add(number == records.last() ? records.first() : number + 1);
      }
    }
    return new ArrayList<>(numbers);
  }

  private static boolean movesOn(Action action) {
    for (Action.Branch branch : action.branches()) {
      for (Effect effect : branch.effects()) {
        if (effect instanceof Effect.MoveRecord) {
          return true;
        }
      }
    }
    return false;
  }

  private List<Integer> locations() {
    List<Integer> numbers = new ArrayList<>();
    for (Location location : moves.task.description.locations()) {
      Slot slot = moves.task.layout.slot(location.field(), location.record());
      if (moves.scope.mayChange(slot)
          && (!moves.task.right(moves.state.working(), slot)
              || !moves.task.facts.steering(slot.field()).isEmpty())) {
        numbers.add(location.number());
      }
    }
    if (moves.scope.location() >= 0) {
      numbers.add(moves.scope.location());
    }
    if (numbers.isEmpty() && !moves.task.description.locations().isEmpty()) {
      numbers.add(moves.task.description.locations().get(0).number());
    }
    return numbers;
  }

  private void over(Entry.Typed entry, Slot slot, Value value, String typed) {
    Optional<List<String>> keys = keys(entry, typed);
    if (keys.isEmpty()) {
      moves.task.notice(slot, Reasons.notOnThisKeypad(moves.task, slot));
      return;
    }
    if (confirmsItself(entry, typed)) {
      moves.addTypingOver(slot, value, from -> moves.start(from).press(keys.get()));
    } else {
      if (moves.reaches(entry.confirm())) {
        moves.addTypingOver(
            slot, value, from -> moves.start(from).press(keys.get()).press(entry.confirm()));
      }
      moves.addLeaving(from -> moves.start(from).press(keys.get()));
    }
  }

  private void type(Entry.Typed entry, String typed) {
    Optional<List<String>> keys = keys(entry, typed);
    if (keys.isEmpty()) {
      return;
    }
    if (confirmsItself(entry, typed)) {
      moves.add(from -> moves.start(from).press(keys.get()));
    } else if (moves.reaches(entry.confirm())) {
      moves.add(from -> moves.start(from).press(keys.get()).press(entry.confirm()));
    }
  }

  private Optional<List<String>> keys(Entry.Typed entry, String typed) {
    if (typed.length() < entry.least() || typed.length() > entry.most()) {
      return Optional.empty();
    }
    Predicate<String> free =
        key -> moves.reaches(key) && !key.equals(entry.confirm()) && !key.equals(entry.erase());
    return moves.task.typist.digits(typed, entry.hexadecimal(), free);
  }

  private static boolean confirmsItself(Entry.Typed entry, String typed) {
    return entry.advances() && typed.length() == entry.most();
  }
}
