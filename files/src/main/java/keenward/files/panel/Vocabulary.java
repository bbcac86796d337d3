package keenward.files.panel;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.RecordKind;
import keenward.files.QuotedText;
import keenward.files.shape.NearestWord;
import keenward.files.yaml.YamlPointer;

/**
 * What the names of a description mean: its records, fields, screens, keypads, keys and ways of
 * leaving.
 */
final class Vocabulary {
  /** Name under which the memory keeps fields that there are once. */
  static final String PANEL = "panel";

  /** Name of the field at the current location. */
  static final String VALUE = "value";

  private final Faults faults;
  private final Map<String, RecordKind> records = new LinkedHashMap<>();
  private final Map<String, FieldType> types = new LinkedHashMap<>();
  private final Map<String, String> recordOf = new LinkedHashMap<>();
  private final List<String> keypads;
  private final List<String> screens;
  private final List<String> leaving;
  private final Set<String> keys = new LinkedHashSet<>();

  Vocabulary(Faults faults) {
    this.faults = faults;
    this.keypads = faults.declared("/keypads");
    this.screens = faults.declared("/screens");
    this.leaving = faults.declared("/leaving");
    for (String keypad : keypads) {
      keys.addAll(faults.items(YamlPointer.of("keypads", keypad, "keys")));
      keys.addAll(faults.declared(YamlPointer.of("keypads", keypad, "long keys")));
    }
    for (String record : faults.declared("/memory")) {
      for (String field : faults.declared(YamlPointer.of("memory", record))) {
        recordOf.put(fullName(record, field), record.equals(PANEL) ? "" : record);
      }
    }
  }

  static String fullName(String record, String field) {
    return record.equals(PANEL) ? field : record + "." + field;
  }

  void learn(RecordKind kind) {
    records.put(kind.name(), kind);
  }

  void learn(String field, FieldType type) {
    types.put(field, type);
  }

  boolean hasKey(String key) {
    return keys.contains(key);
  }

  Map<String, RecordKind> records() {
    return records;
  }

  Optional<FieldType> type(String field) {
    return Optional.ofNullable(types.get(field));
  }

  /** The record of a field, or empty where there is one field for the whole panel. */
  String recordOf(String field) {
    return recordOf.getOrDefault(field, "");
  }

  Collection<String> fields() {
    return recordOf.keySet();
  }

  boolean isRecord(String name) {
    return recordNames().contains(name);
  }

  /**
   * Kinds of record that are declared, or used in the memory, where a fault has told that they are
   * not.
   */
  private Set<String> recordNames() {
    Set<String> names = new LinkedHashSet<>(faults.declared("/records"));
    names.addAll(faults.declared("/memory"));
    names.remove(PANEL);
    return names;
  }

  /** A field by name, or the value at the current location. */
  Optional<FieldReference> reference(String pointer, String name) {
    if (name.equals(VALUE)) {
      return Optional.of(new FieldReference.AtLocation());
    }
    if (recordOf.containsKey(name)) {
      return Optional.of(new FieldReference.Named(name));
    }
    faults.unknown(pointer, "field", name, recordOf.keySet());
    return Optional.empty();
  }

  /** A field by name. */
  Optional<String> field(String pointer, String name) {
    if (recordOf.containsKey(name)) {
      return Optional.of(name);
    }
    faults.unknown(pointer, "field", name, recordOf.keySet());
    return Optional.empty();
  }

  Optional<String> record(String pointer, String name) {
    return known(pointer, "kind of record", name, recordNames());
  }

  /** Checks that a kind of record in the memory is declared. */
  void checkDeclared(String pointer, String record) {
    known(pointer, "kind of record", record, faults.declared("/records"));
  }

  Optional<String> keypad(String pointer, String name) {
    return known(pointer, "keypad", name, keypads);
  }

  Optional<String> screen(String pointer, String name) {
    return known(pointer, "screen", name, screens);
  }

  Optional<String> way(String pointer, String name) {
    return known(pointer, "way of leaving", name, leaving);
  }

  Optional<String> key(String pointer, String name) {
    if (keys.contains(name)) {
      return Optional.of(name);
    }
    String question = NearestWord.question(name, keys);
    faults.add(
        pointer,
        "no keypad has the key " + QuotedText.of(name),
        "one of " + String.join(", ", keys),
        question.isEmpty() ? "write a key that is there, or add it to a keypad" : question);
    return Optional.empty();
  }

  private Optional<String> known(
      String pointer, String label, String name, Collection<String> names) {
    if (names.contains(name)) {
      return Optional.of(name);
    }
    faults.unknown(pointer, label, name, names);
    return Optional.empty();
  }
}
