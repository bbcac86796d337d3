package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.Slot;

/** The part of the memory that a search is about: it may change these slots and no others. */
final class Scope {
  private final Task task;
  private final List<Unit> units;
  private final Set<Integer> givenUp;
  private final int location;
  private final BitSet mayChange = new BitSet();
  private final List<Slot> required = new ArrayList<>();
  private final BitSet requiredSlots = new BitSet();
  private final Map<String, TreeSet<Integer>> records = new LinkedHashMap<>();

  /**
   * A group's slots.
   *
   * @param record kind of record, or empty
   * @param number number of the record, or 0
   * @param slots all of its slots
   */
  record Unit(String record, int number, List<Slot> slots) {
    Unit {
      slots = List.copyOf(slots);
    }
  }

  /** Nothing at all: for ways in and out. */
  static Scope nothing(Task task) {
    return new Scope(task, List.of(), Set.of());
  }

  /** Nothing to change either, on the way to these records and this location, if it is one. */
  static Scope place(Task task, List<Unit> records, int location) {
    return new Scope(task, records, Set.of(), location);
  }

  /**
   * A scope of some units.
   *
   * @param givenUp indices of slots that need not be as wanted in the end
   */
  Scope(Task task, List<Unit> units, Set<Integer> givenUp) {
    this(task, units, givenUp, -1);
  }

  private Scope(Task task, List<Unit> units, Set<Integer> givenUp, int location) {
    this.task = task;
    this.location = location;
    this.units = List.copyOf(units);
    this.givenUp = Set.copyOf(givenUp);
    for (Unit unit : units) {
      if (!unit.record().isEmpty()) {
        records.computeIfAbsent(unit.record(), name -> new TreeSet<>()).add(unit.number());
      }
      for (Slot slot : unit.slots()) {
        mayChange.set(slot.index());
        if (task.matters(slot) && !givenUp.contains(slot.index())) {
          required.add(slot);
          requiredSlots.set(slot.index());
        }
      }
    }
  }

  /** The same scope where only some slots have to be right in the end. */
  Scope requiring(List<Slot> slots) {
    Scope narrower = new Scope(task, units, Set.of());
    narrower.required.clear();
    narrower.requiredSlots.clear();
    for (Slot slot : slots) {
      narrower.required.add(slot);
      narrower.requiredSlots.set(slot.index());
    }
    return narrower;
  }

  List<Unit> units() {
    return units;
  }

  /** The location to get to, or -1. */
  int location() {
    return location;
  }

  boolean mayChange(Slot slot) {
    return mayChange.get(slot.index());
  }

  boolean mayChange(int index) {
    return mayChange.get(index);
  }

  /** Slots that have to be right in the end. */
  List<Slot> required() {
    return required;
  }

  /** Whether the slot may end otherwise than wanted, as long as nobody enters that. */
  boolean givenUp(Slot slot) {
    return givenUp.contains(slot.index());
  }

  boolean requires(Slot slot) {
    return requiredSlots.get(slot.index());
  }

  /** Numbers of the records of a kind that are in scope. */
  Set<Integer> records(String kind) {
    TreeSet<Integer> numbers = records.get(kind);
    return numbers == null ? Set.of() : numbers;
  }

  boolean complete(Memory memory) {
    for (Slot slot : required) {
      if (!task.right(memory, slot)) {
        return false;
      }
    }
    return true;
  }

  /** Required slots that are not right yet. */
  List<Slot> wrong(Memory memory) {
    List<Slot> wrong = new ArrayList<>();
    for (Slot slot : required) {
      if (!task.right(memory, slot)) {
        wrong.add(slot);
      }
    }
    return wrong;
  }

  /**
   * Whether a move keeps to one unit at a time: it changes at most one, and none while another is
   * begun and not finished.
   *
   * @param found what the memory was before anything was begun
   */
  boolean oneAtATime(Memory found, Memory before, Memory after) {
    int changed = -1;
    for (int unit = 0; unit < units.size(); unit++) {
      if (differs(units.get(unit), before, after)) {
        if (changed >= 0) {
          return false;
        }
        changed = unit;
      }
    }
    if (changed < 0) {
      return true;
    }
    for (int unit = 0; unit < units.size(); unit++) {
      if (unit != changed && begun(units.get(unit), found, before)) {
        return false;
      }
    }
    return true;
  }

  private static boolean differs(Unit unit, Memory before, Memory after) {
    for (Slot slot : unit.slots()) {
      if (!after.get(slot).equals(before.get(slot))) {
        return true;
      }
    }
    return false;
  }

  private boolean begun(Unit unit, Memory found, Memory memory) {
    boolean wrong = false;
    for (Slot slot : unit.slots()) {
      wrong |= !task.right(memory, slot);
    }
    return wrong && differs(unit, found, memory);
  }
}
