package keenward.core.dialogue.machine;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.KeypadKind;
import keenward.core.dialogue.description.Leaving;
import keenward.core.dialogue.description.Location;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.RecordKind;
import keenward.core.dialogue.description.Screen;
import org.jspecify.annotations.Nullable;

/** A description with its names looked up once. */
final class Rules {
  /** Prefix of the key that stands for a whole code. */
  static final String CODE = "code:";

  final PanelDescription description;
  final MemoryLayout layout;
  final TreeMap<Integer, Location> locations = new TreeMap<>();
  final Memory unknown;
  final int longestWindowTenths;
  final int slowestKeypadRestartTenths;
  private final Map<String, Integer> kindIndex = new HashMap<>();
  private final Map<String, Field> fields = new HashMap<>();

  Rules(PanelDescription description) {
    this.description = description;
    this.layout = new MemoryLayout(description);
    this.unknown = layout.unknown();
    for (int index = 0; index < description.records().size(); index++) {
      kindIndex.put(description.records().get(index).name(), index);
    }
    for (Field field : description.fields()) {
      fields.put(field.name(), field);
    }
    for (Location location : description.locations()) {
      locations.put(location.number(), location);
    }
    this.longestWindowTenths = Windows.longest(description);
    int restart = 0;
    for (KeypadKind keypad : description.keypads()) {
      restart = Math.max(restart, keypad.restartTenths());
    }
    this.slowestKeypadRestartTenths = restart;
  }

  /** The slot that a reference means, where there is one. */
  Optional<Slot> slot(FieldReference reference, IntUnaryOperator recordOfKind, int location) {
    return switch (reference) {
      case FieldReference.Named named -> {
        Field field = field(named.field());
        int record = field.byRecord() ? recordOfKind.applyAsInt(kind(field.record())) : 0;
        yield Optional.of(layout.slot(field.name(), record));
      }
      case FieldReference.AtLocation at -> {
        Location place = location(location);
        yield place == null
            ? Optional.empty()
            : Optional.of(layout.slot(place.field(), place.record()));
      }
    };
  }

  int kind(String record) {
    Integer index = kindIndex.get(record);
    if (index == null) {
      throw new IllegalArgumentException("no record " + record);
    }
    return index;
  }

  RecordKind kindAt(int index) {
    return description.records().get(index);
  }

  Field field(String name) {
    Field field = fields.get(name);
    if (field == null) {
      throw new IllegalArgumentException("no field " + name);
    }
    return field;
  }

  Screen screen(String name) {
    Screen screen = description.screens().get(name);
    if (screen == null) {
      throw new IllegalArgumentException("no screen " + name);
    }
    return screen;
  }

  Leaving leaving(String way) {
    Leaving leaving = description.leaving().get(way);
    if (leaving == null) {
      throw new IllegalArgumentException("no way of leaving " + way);
    }
    return leaving;
  }

  int[] firstRecords() {
    int[] records = new int[description.records().size()];
    for (int index = 0; index < records.length; index++) {
      records[index] = description.records().get(index).first();
    }
    return records;
  }

  @Nullable Location location(int number) {
    return locations.get(number);
  }
}
