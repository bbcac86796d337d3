package keenward.core.dialogue.machine;

import java.util.Optional;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.RecordKind;
import keenward.core.dialogue.description.Value;

/** What happens when a transmitter is heard. */
final class Hearing {
  private Hearing() {}

  static void hear(Turn turn, Input.TransmitterHeard heard) {
    if (turn.screen.entry().isEmpty()
        || !(turn.screen.entry().get() instanceof Entry.Hear entry)) {
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
    int holder = holder(turn, serial, serialValue.get(), part, partValue);
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
    String name = heard.serial() + " " + heard.part();
    int times = turn.typing.text().equals(name) ? turn.typing.count() + 1 : 1;
    if (times >= entry.times()) {
      return true;
    }
    turn.typing = Typing.EMPTY.withText(name).withPending("", times);
    return false;
  }

  /** The record other than the current one that holds the same serial and part, or -1. */
  private static int holder(
      Turn turn, Slot serial, Value serialValue, Optional<Slot> part, Value partValue) {
    if (!serial.field().byRecord()) {
      return -1;
    }
    RecordKind kind = turn.rules.kindAt(turn.rules.kind(serial.field().record()));
    for (int record = kind.first(); record <= kind.last(); record++) {
      if (record != serial.record()
          && turn.holds(turn.rules.layout.slot(serial.field().name(), record), serialValue)
          && (part.isEmpty()
              || turn.holds(
                  turn.rules.layout.slot(part.get().field().name(), record), partValue))) {
        return record;
      }
    }
    return -1;
  }
}
