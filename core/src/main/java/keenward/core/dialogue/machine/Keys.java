package keenward.core.dialogue.machine;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.KeyMeanings;
import keenward.core.dialogue.description.KeypadKind;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Target;

/** The keys of keypads: which there are, how long they take, and which a screen listens to. */
final class Keys {
  private Keys() {}

  static boolean has(Rules rules, KeypadKind keypad, String key) {
    return key.startsWith(Rules.CODE) ? typesDigits(rules, keypad) : keypad.keys().containsKey(key);
  }

  private static boolean typesDigits(Rules rules, KeypadKind keypad) {
    for (char digit = '0'; digit <= '9'; digit++) {
      boolean found = false;
      for (Map.Entry<String, String> meaning :
          rules.description.keyMeanings().direct().entrySet()) {
        found |=
            meaning.getValue().equals(String.valueOf(digit))
                && keypad.keys().containsKey(meaning.getKey());
      }
      if (!found) {
        return false;
      }
    }
    return true;
  }

  /** How long a press takes until the next key is heard; a code counts as its longest length. */
  static int busyTenths(Rules rules, Turn turn, KeypadKind keypad, String key) {
    if (!key.startsWith(Rules.CODE)) {
      return keypad.keys().getOrDefault(key, 0) + keypad.lagTenths();
    }
    return keypad.lagTenths() * codeLength(turn);
  }

  /** Most digits of the code that a screen asks for; 1 where it asks for none. */
  static int codeLength(Turn turn) {
    if (turn.screen.entry().isPresent() && turn.screen.entry().get() instanceof Entry.Coded coded) {
      for (Field field : turn.rules.description.fields()) {
        if (field.type() instanceof FieldType.Code code && asksFor(coded.target(), field)) {
          return code.most();
        }
      }
    }
    return 1;
  }

  private static boolean asksFor(Target target, Field field) {
    FieldReference named = new FieldReference.Named(field.name());
    return switch (target) {
      case Target.ToField to -> to.field().equals(named);
      case Target.Repeat to -> to.field().equals(named);
      case Target.Check to -> to.field().equals(named);
      default -> false;
    };
  }

  static List<String> of(Rules rules, Screen screen, String keypadName) {
    Set<String> keys = new LinkedHashSet<>(screen.keys().keySet());
    screen.entry().ifPresent(entry -> add(keys, rules.description.keyMeanings(), entry));
    keys.remove("");
    List<String> pressable = new ArrayList<>();
    rules
        .description
        .findKeypad(keypadName)
        .ifPresent(keypad -> {
          for (String key : keys) {
            if (keypad.keys().containsKey(key)) {
              pressable.add(key);
            }
          }
        });
    return List.copyOf(pressable);
  }

  private static void add(Set<String> keys, KeyMeanings meanings, Entry entry) {
    switch (entry) {
      case Entry.Typed typed -> {
        addAll(keys, typed.confirm(), typed.erase());
        keys.addAll(meanings.direct().keySet());
        if (typed.hexadecimal()) {
          meanings
              .shifted()
              .forEach((shift, shifted) -> {
                keys.add(shift);
                keys.addAll(shifted.keySet());
              });
        }
      }
      case Entry.Coded coded -> keys.add(coded.confirm());
      case Entry.Scroll scroll -> addAll(keys, scroll.next(), scroll.previous(), scroll.confirm());
      case Entry.Menu menu -> addAll(keys, menu.next(), menu.previous(), menu.confirm());
      case Entry.ToggleByCode toggle -> {
        keys.add(toggle.confirm());
        keys.addAll(meanings.direct().keySet());
      }
      case Entry.ToggleByCursor toggle ->
          addAll(keys, toggle.next(), toggle.previous(), toggle.toggle(), toggle.confirm());
      case Entry.Lettered lettered -> {
        addAll(keys, lettered.advance(), lettered.erase(), lettered.clear(), lettered.confirm());
        keys.addAll(meanings.letters().keySet());
      }
      case Entry.WordByNumber words -> {
        addAll(keys, words.erase(), words.confirm());
        keys.addAll(meanings.direct().keySet());
      }
      case Entry.WordByScroll words ->
          addAll(keys, words.next(), words.previous(), words.add(), words.erase(), words.confirm());
      case Entry.Hear hear -> {
        // Listens to transmitters, not to keys.
      }
    }
  }

  private static void addAll(Set<String> keys, String... more) {
    for (String key : more) {
      keys.add(key);
    }
  }
}
