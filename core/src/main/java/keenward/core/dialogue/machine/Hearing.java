package keenward.core.dialogue.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.RecordKind;
import keenward.core.dialogue.description.Value;

/** What happens when a transmitter is heard. */
final class Hearing {
  private Hearing() {}

  static void hear(Turn turn, Input.TransmitterHeard heard) {
    if (turn.screen.entry().isEmpty() || !(turn.screen.entry().get() instanceof Entry.Hear entry)) {
      throw Interrupted.refused(Refusal.NOT_LISTENING);
    }
    Slot serial = turn.slot(entry.serial());
    Optional<Value> serialValue = TypedForm.read(serial.field().type(), heard.serial());
    Optional<Slot> part = entry.part().map(turn::slot);
    if (serialValue.isEmpty() || (part.isPresent() && !mayHold(part.get(), heard.part()))) {
      throw Interrupted.refused(Refusal.OUT_OF_RANGE);
    }
    if (!heardOftenEnough(turn, entry, heard)) {
      return;
    }
    Value partValue = new Value.Word(heard.part());
    boolean onlyCertain = turn.onlyCertainHolders(transmission(heard));
    int holder = holder(turn, serial, serialValue.get(), part, partValue, onlyCertain);
    if (holder >= 0) {
      turn.chooseOther(holder);
      turn.note(Refusal.KNOWN_ALREADY);
      turn.typing = Typing.EMPTY;
      if (entry.known().isPresent()) {
        turn.follow(entry.known().get());
      }
      return;
    }
    turn.store(serial, serialValue.get(), false);
    if (part.isPresent()) {
      turn.store(part.get(), partValue, false);
    }
    turn.follow(entry.then());
  }

  private static String transmission(Input.TransmitterHeard heard) {
    return heard.serial() + " " + heard.part();
  }

  static List<State> holders(
      Interpreter interpreter, Rules rules, State state, Input.TransmitterHeard heard) {
    if (rules.screen(state.screen()).entry().isEmpty()
        || !(rules.screen(state.screen()).entry().get() instanceof Entry.Hear entry)) {
      return List.of(state);
    }
    Turn turn = new Turn(rules, state, "");
    Slot serial = turn.slot(entry.serial());
    Optional<String> part = entry.part().map(reference -> turn.slot(reference).field().name());
    Optional<Value> value = TypedForm.read(serial.field().type(), heard.serial());
    if (!serial.field().byRecord() || value.isEmpty()) {
      return List.of(state);
    }
    State plain = state.withOnlyCertainHolders(transmission(heard));
    List<State> states = new ArrayList<>();
    RecordKind kind = rules.kindAt(rules.kind(serial.field().record()));
    for (int record = kind.first(); record <= kind.last(); record++) {
      if (record == serial.record()) {
        continue;
      }
      Slot other = rules.layout.slot(serial.field().name(), record);
      State held = narrowed(interpreter, state, other, value.get());
      boolean holds = held.working().get(other).certainly(value.get());
      if (part.isPresent()) {
        Slot otherPart = rules.layout.slot(part.get(), record);
        held = narrowed(interpreter, held, otherPart, new Value.Word(heard.part()));
        holds &= held.working().get(otherPart).certainly(new Value.Word(heard.part()));
      }
      if (holds) {
        states.add(held.withOnlyCertainHolders(transmission(heard)));
        if (held.equals(state)) {
          return states;
        }
      }
    }
    states.add(0, plain);
    return states;
  }

  private static State narrowed(Interpreter interpreter, State state, Slot slot, Value value) {
    return state.working().get(slot).known() || !state.working().get(slot).mayBe(value)
        ? state
        : interpreter.assume(state, slot, value);
  }

  private static boolean mayHold(Slot slot, String part) {
    if (slot.field().type() instanceof FieldType.Choice choice) {
      for (FieldType.Option option : choice.options()) {
        if (option.word().equals(part)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean heardOftenEnough(
      Turn turn, Entry.Hear entry, Input.TransmitterHeard heard) {
    String name = transmission(heard);
    int times = turn.typing.text().equals(name) ? turn.typing.count() + 1 : 1;
    if (times >= entry.times()) {
      return true;
    }
    turn.typing = Typing.EMPTY.withText(name).withPending("", times);
    return false;
  }

  /**
   * The first record other than the current one that holds the same serial and part, or -1.
   *
   * @param onlyCertain whether records of which it is not known are taken not to hold it
   */
  private static int holder(
      Turn turn,
      Slot serial,
      Value serialValue,
      Optional<Slot> part,
      Value partValue,
      boolean onlyCertain) {
    if (!serial.field().byRecord()) {
      return -1;
    }
    RecordKind kind = turn.rules.kindAt(turn.rules.kind(serial.field().record()));
    for (int record = kind.first(); record <= kind.last(); record++) {
      if (record != serial.record()
          && holds(turn, serial.field().name(), record, serialValue, onlyCertain)
          && (part.isEmpty()
              || holds(turn, part.get().field().name(), record, partValue, onlyCertain))) {
        return record;
      }
    }
    return -1;
  }

  private static boolean holds(
      Turn turn, String field, int record, Value value, boolean onlyCertain) {
    Slot slot = turn.rules.layout.slot(field, record);
    return onlyCertain ? turn.value(slot).certainly(value) : turn.holds(slot, value);
  }
}
