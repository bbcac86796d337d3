package keenward.core.dialogue.machine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.RecordKind;
import keenward.core.dialogue.description.Value;

/** Where each field of each record lies in {@link Memory}: field by field, records ascending. */
public final class MemoryLayout {
  private final List<Slot> slots = new ArrayList<>();
  private final Map<String, Integer> firstIndex = new HashMap<>();
  private final Map<String, RecordKind> kindOfField = new HashMap<>();

  /** The layout of a description's memory. */
  public MemoryLayout(PanelDescription description) {
    for (Field field : description.fields()) {
      firstIndex.put(field.name(), slots.size());
      if (field.byRecord()) {
        RecordKind kind =
            description
                .findRecord(field.record())
                .orElseThrow(() -> new IllegalArgumentException("no record " + field.record()));
        kindOfField.put(field.name(), kind);
        for (int number = kind.first(); number <= kind.last(); number++) {
          slots.add(new Slot(slots.size(), field, number));
        }
      } else {
        slots.add(new Slot(slots.size(), field, 0));
      }
    }
  }

  /** How many slots there are. */
  public int size() {
    return slots.size();
  }

  /** All slots in order of their index. */
  public List<Slot> slots() {
    return Collections.unmodifiableList(slots);
  }

  /** The slot at {@code index}. */
  public Slot slot(int index) {
    return slots.get(index);
  }

  /** Whether {@code field} exists and has a record of that number (0 for a single field). */
  public boolean contains(String field, int record) {
    RecordKind kind = kindOfField.get(field);
    return firstIndex.containsKey(field) && (kind == null ? record == 0 : kind.contains(record));
  }

  /** The slot of a field by its full name; {@code record} is ignored for a single field. */
  public Slot slot(String field, int record) {
    Integer first = firstIndex.get(field);
    if (first == null) {
      throw new IllegalArgumentException("no field " + field);
    }
    RecordKind kind = kindOfField.get(field);
    if (kind == null) {
      return slots.get(first);
    }
    if (!kind.contains(record)) {
      throw new IllegalArgumentException("no " + kind.name() + " " + record);
    }
    return slots.get(first + record - kind.first());
  }

  /** A memory that holds every field's initial value. */
  public Memory initial() {
    Value[] values = new Value[slots.size()];
    for (Slot slot : slots) {
      values[slot.index()] = slot.field().initial();
    }
    return Memory.of(values);
  }

  /** A memory of which nothing is known. */
  public Memory unknown() {
    Value[] values = new Value[slots.size()];
    Arrays.fill(values, Value.unknown());
    return Memory.of(values);
  }
}
