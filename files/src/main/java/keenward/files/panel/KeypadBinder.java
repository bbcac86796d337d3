package keenward.files.panel;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.dialogue.description.KeyMeanings;
import keenward.core.dialogue.description.KeypadKind;
import keenward.core.quantities.Span;
import keenward.files.QuotedText;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.yaml.YamlPointer;

/** Turns keypads and typing into values. */
final class KeypadBinder {
  private final Vocabulary vocabulary;
  private final Faults faults;

  KeypadBinder(Vocabulary vocabulary, Faults faults) {
    this.vocabulary = vocabulary;
    this.faults = faults;
  }

  List<KeypadKind> keypads(Map<String, Fields> all) {
    List<KeypadKind> keypads = new ArrayList<>();
    all.forEach((name, fields) -> keypad(name, fields).ifPresent(keypads::add));
    if (all.isEmpty()) {
      faults.add("/keypads", "a panel without a keypad", "at least one keypad", "add one");
    }
    return keypads;
  }

  private Optional<KeypadKind> keypad(String name, Fields fields) {
    String pointer = YamlPointer.of("keypads", name);
    Map<String, Integer> keys = new LinkedHashMap<>();
    fields.list(PanelDescriptionShape.KEYPAD_KEYS).forEach(key -> keys.put(key, 0));
    fields
        .find(PanelDescriptionShape.KEYPAD_LONG_KEYS)
        .ifPresent(longKeys ->
            longKeys.forEach((key, held) -> {
              String place = YamlPointer.child(pointer + "/long keys", key);
              if (keys.containsKey(key)) {
                faults.add(
                    place,
                    "the key " + QuotedText.of(key) + " is among keys as well",
                    "another name for the long press",
                    "call it for example 'hold " + key + "'");
              }
              keys.put(key, Tenths.of(faults, place, held));
            }));
    for (String key : keys.keySet()) {
      if (key.startsWith("code:")) {
        faults.add(
            pointer + "/keys",
            "a key called " + QuotedText.of(key),
            "a name that does not start with code:, which stands for a whole code",
            "rename it");
      }
    }
    if (!fields.isComplete()) {
      return Optional.empty();
    }
    KeypadKind.Shows shows = fields.get(PanelDescriptionShape.KEYPAD_SHOWS);
    if (shows == KeypadKind.Shows.TEXT && !fields.mentions(PanelDescriptionShape.KEYPAD_COLUMNS)) {
      faults.add(
          pointer,
          "a text keypad without columns",
          "characters of a line",
          "add for example columns: 20");
    }
    if (shows != KeypadKind.Shows.TEXT && !fields.mentions(PanelDescriptionShape.KEYPAD_WORDS)) {
      faults.add(
          pointer,
          "a keypad of words or lamps without words",
          "everything that it can show",
          "add for example words: [ZONE, OPEN]");
    }
    return Optional.of(
        new KeypadKind(
            name,
            shows,
            fields.find(PanelDescriptionShape.KEYPAD_LINES).orElse(1),
            fields.find(PanelDescriptionShape.KEYPAD_COLUMNS).orElse(0),
            fields.list(PanelDescriptionShape.KEYPAD_WORDS),
            fields.find(PanelDescriptionShape.KEYPAD_DIGITS).orElse(0),
            keys,
            tenths(pointer, fields, PanelDescriptionShape.KEYPAD_LAG),
            fields.find(PanelDescriptionShape.KEYPAD_MIRRORS).orElse(true),
            tenths(pointer, fields, PanelDescriptionShape.KEYPAD_RESTARTS)));
  }

  private int tenths(String pointer, Fields fields, Field<Span> field) {
    return fields
        .find(field)
        .map(span -> Tenths.of(faults, YamlPointer.child(pointer, field.name()), span))
        .orElse(0);
  }

  KeyMeanings typing(Optional<Fields> typing) {
    Map<String, String> characters = new LinkedHashMap<>();
    Map<String, Map<String, String>> shift = new LinkedHashMap<>();
    Map<String, String> letters = new LinkedHashMap<>();
    int pause = 0;
    if (typing.isPresent()) {
      Fields fields = typing.get();
      fields.find(PanelDescriptionShape.TYPING_CHARACTERS).ifPresent(characters::putAll);
      fields.find(PanelDescriptionShape.TYPING_SHIFT).ifPresent(shift::putAll);
      fields.find(PanelDescriptionShape.TYPING_LETTERS).ifPresent(letters::putAll);
      pause = tenths("/typing", fields, PanelDescriptionShape.TYPING_TAP_PAUSE);
    }
    characters.keySet().forEach(key -> vocabulary.key("/typing/characters", key));
    letters.keySet().forEach(key -> vocabulary.key("/typing/letters", key));
    shift.forEach((key, next) -> {
      vocabulary.key("/typing/shift", key);
      String place = YamlPointer.of("typing", "shift", key);
      next.keySet().forEach(second -> vocabulary.key(place, second));
      next.values().forEach(character -> single(place, character));
    });
    characters.values().forEach(character -> single("/typing/characters", character));
    if (characters.isEmpty()) {
      for (int digit = 0; digit <= 9; digit++) {
        String key = Integer.toString(digit);
        if (vocabulary.hasKey(key)) {
          characters.put(key, key);
        }
      }
    }
    return new KeyMeanings(characters, shift, letters, pause);
  }

  private void single(String pointer, String character) {
    if (character.length() != 1) {
      faults.add(
          pointer,
          QuotedText.of(character) + " as a character",
          "one character",
          "write the one that the key types");
    }
  }
}
