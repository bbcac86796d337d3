package keenward.core.dialogue.search;

import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.KeypadKind;
import keenward.core.dialogue.description.LiveRecords;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Display;
import keenward.core.dialogue.machine.Interpreter;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.MemoryLayout;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;
import keenward.core.dialogue.order.Reason;
import keenward.core.dialogue.planned.MemoryCondition;

/** What an order is wanted for, and what was noticed while looking for one. */
final class Task {
  private static final BitSet NO_RECORDS = new BitSet();

  final Interpreter interpreter;
  final PanelDescription description;
  final MemoryLayout layout;
  final KeypadKind keypad;
  final Memory found;

  /** What shall be there in the end; unknown where that does not matter. */
  final Memory wanted;

  final Typist typist;
  final DescriptionFacts facts;
  private final Set<String> consents;
  private final Set<Integer> planned = new HashSet<>();
  private final Map<Integer, Reason> noticed = new LinkedHashMap<>();
  private final Map<Integer, List<Value>> listed = new HashMap<>();
  private final Map<String, BitSet> liveRecords = new HashMap<>();

  Task(
      Interpreter interpreter,
      KeypadKind keypad,
      Memory found,
      Map<Slot, Value> planned,
      Set<String> consents) {
    this.interpreter = interpreter;
    this.description = interpreter.description();
    this.layout = interpreter.layout();
    this.keypad = keypad;
    this.found = found;
    this.consents = consents;
    this.typist = new Typist(description.keyMeanings(), keypad);
    this.facts = new DescriptionFacts(description);
    LiveRecords.of(description)
        .forEach((screen, names) -> {
          BitSet kinds = new BitSet();
          for (int kind = 0; kind < description.records().size(); kind++) {
            kinds.set(kind, names.contains(description.records().get(kind).name()));
          }
          liveRecords.put(screen, kinds);
        });
    Memory target = found;
    for (Map.Entry<Slot, Value> entry : planned.entrySet()) {
      target = target.with(entry.getKey(), entry.getValue());
      this.planned.add(entry.getKey().index());
    }
    this.wanted = target;
  }

  /** Indices of the kinds of record whose current one may still matter on a screen. */
  BitSet liveRecords(String screen) {
    return liveRecords.getOrDefault(screen, NO_RECORDS);
  }

  /** Whether a slot holds what is wanted, as far as anything is. */
  boolean right(Memory memory, Slot slot) {
    return right(slot, memory.get(slot));
  }

  /** Whether a value is what is wanted, as far as anything is. */
  boolean right(Slot slot, Value held) {
    Value value = wanted.get(slot);
    return !value.known() || held.certainly(value);
  }

  /** Whether the plan itself speaks about the slot. */
  boolean planned(Slot slot) {
    return planned.contains(slot.index());
  }

  /** Whether it is wanted that the slot holds something particular. */
  boolean matters(Slot slot) {
    return wanted.get(slot).known();
  }

  boolean mayOverwriteUnseen(Slot slot) {
    return consents.contains(slot.field().name());
  }

  /** Whether the display shows what an unknown slot holds. A code is never shown. */
  boolean shows(State state, Slot slot) {
    if (slot.field().type() instanceof FieldType.Code) {
      return false;
    }
    return contains(interpreter.display(state, keypad.name()), slot);
  }

  private static boolean contains(Display display, Slot slot) {
    for (Slot shown : display.unknown()) {
      if (shown.index() == slot.index()) {
        return true;
      }
    }
    return false;
  }

  /** Every value that a slot may hold where they can be listed; empty where they cannot. */
  List<Value> mayHold(Slot slot) {
    return listed.computeIfAbsent(
        slot.index(),
        index -> {
          List<Value> scrolled = interpreter.completions(slot, ScrollMoves.MOST_VALUES);
          if (scrolled.isEmpty()) {
            return List.of();
          }
          Set<Value> values = new LinkedHashSet<>(scrolled);
          values.add(slot.field().initial());
          values.addAll(facts.given(slot.field()));
          if (slot.field().type() instanceof FieldType.WholeNumber number) {
            for (FieldType.Special special : number.specials()) {
              values.add(new Value.Whole(special.number()));
            }
          }
          return List.copyOf(values);
        });
  }

  /** Whether the slot certainly means nothing once everything is as wanted. */
  boolean meaningless(Slot slot) {
    return !MemoryCondition.mayHold(slot.field().onlyWhen(), layout, wanted, slot.record());
  }

  /**
   * Notes why a slot could not be stored somewhere, in case there turns out to be no other place.
   */
  void notice(Slot slot, Reason reason) {
    noticed.putIfAbsent(slot.index(), reason);
  }

  /** What was noticed about a slot. */
  List<Reason> noticed(Slot slot) {
    Reason reason = noticed.get(slot.index());
    return reason == null ? List.of() : List.of(reason);
  }
}
