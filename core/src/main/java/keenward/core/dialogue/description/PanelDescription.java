package keenward.core.dialogue.description;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A control panel as its description file says it is. All names in it resolve; whether it makes
 * sense is for the linter.
 *
 * @param panel the panel's name
 * @param family family of dialogue, for people
 * @param keypads kinds of keypad, the usual one first
 * @param keyMeanings what keys type
 * @param capacity what it can connect and supply
 * @param records kinds of record
 * @param fields fields of the memory
 * @param screens screens, by name
 * @param locations numbered locations, in ascending order
 * @param start screen when nobody is programming
 * @param leaving ways of leaving that keys lead to, by name
 * @param manners how it behaves around programming
 * @param recovery how to get back in when locked out, step by step; empty where there is none
 */
public record PanelDescription(
    String panel,
    String family,
    List<KeypadKind> keypads,
    KeyMeanings keyMeanings,
    Capacity capacity,
    List<RecordKind> records,
    List<Field> fields,
    Map<String, Screen> screens,
    List<Location> locations,
    String start,
    Map<String, Leaving> leaving,
    Manners manners,
    List<String> recovery) {
  public PanelDescription {
    keypads = List.copyOf(keypads);
    records = List.copyOf(records);
    fields = List.copyOf(fields);
    screens = Ordered.copyOf(screens);
    locations = List.copyOf(locations);
    leaving = Ordered.copyOf(leaving);
    recovery = List.copyOf(recovery);
  }

  /** The keypad kind with this name. */
  public Optional<KeypadKind> findKeypad(String name) {
    for (KeypadKind keypad : keypads) {
      if (keypad.name().equals(name)) {
        return Optional.of(keypad);
      }
    }
    return Optional.empty();
  }

  /** The record kind with this name. */
  public Optional<RecordKind> findRecord(String name) {
    for (RecordKind kind : records) {
      if (kind.name().equals(name)) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }

  /** The field with this full name. */
  public Optional<Field> findField(String name) {
    for (Field field : fields) {
      if (field.name().equals(name)) {
        return Optional.of(field);
      }
    }
    return Optional.empty();
  }
}
