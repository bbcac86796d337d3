package keenward.core.dialogue.lint;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import keenward.core.dialogue.description.Entry;
import keenward.core.dialogue.description.KeyMeanings;
import keenward.core.dialogue.description.KeypadKind;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.Screen;

/** No key means two things on one screen, and every key is on some keypad. */
final class KeyMeaningCheck {
  private final PanelDescription description;
  private final List<LintFinding> findings;
  private final Set<String> onKeypads = new HashSet<>();

  private KeyMeaningCheck(PanelDescription description, List<LintFinding> findings) {
    this.description = description;
    this.findings = findings;
    for (KeypadKind keypad : description.keypads()) {
      onKeypads.addAll(keypad.keys().keySet());
    }
  }

  static void check(PanelDescription description, List<LintFinding> findings) {
    KeyMeaningCheck check = new KeyMeaningCheck(description, findings);
    description.screens().values().forEach(check::check);
  }

  private void check(Screen screen) {
    Map<String, List<String>> meanings = new LinkedHashMap<>();
    screen.keys().keySet().forEach(key -> mean(meanings, key, "its own"));
    screen.entry().ifPresent(entry -> add(meanings, entry));
    meanings.forEach((key, roles) -> {
      if (roles.size() > 1) {
        findings.add(
            new LintFinding(
                LintSeverity.ERROR,
                Places.screen(screen.name()),
                "the key '" + key + "' means two things: " + String.join(" and ", roles),
                "give one of them another key"));
      }
      if (!onKeypads.contains(key)) {
        findings.add(
            new LintFinding(
                LintSeverity.ERROR,
                Places.screen(screen.name()),
                "no keypad has the key '" + key + "'",
                "add it to the keys of a keypad, or use another"));
      }
    });
  }

  private static void mean(Map<String, List<String>> meanings, String key, String role) {
    if (!key.isEmpty()) {
      meanings.computeIfAbsent(key, any -> new ArrayList<>()).add(role);
    }
  }

  private void add(Map<String, List<String>> meanings, Entry entry) {
    KeyMeanings keys = description.keyMeanings();
    switch (entry) {
      case Entry.Typed typed -> {
        mean(meanings, typed.confirm(), "confirm");
        mean(meanings, typed.erase(), "erase");
        keys.direct().keySet().forEach(key -> mean(meanings, key, "a digit"));
        if (typed.hexadecimal()) {
          keys.shifted().keySet().forEach(key -> mean(meanings, key, "shift"));
        }
      }
      case Entry.Coded coded -> mean(meanings, coded.confirm(), "confirm");
      case Entry.Scroll scroll -> {
        moves(meanings, scroll.next(), scroll.previous());
        mean(meanings, scroll.confirm(), "confirm");
      }
      case Entry.Menu menu -> {
        moves(meanings, menu.next(), menu.previous());
        mean(meanings, menu.confirm(), "confirm");
      }
      case Entry.ToggleByCode toggle -> {
        mean(meanings, toggle.confirm(), "confirm");
        keys.direct().keySet().forEach(key -> mean(meanings, key, "an option"));
      }
      case Entry.ToggleByCursor toggle -> {
        moves(meanings, toggle.next(), toggle.previous());
        mean(meanings, toggle.toggle(), "switch");
        mean(meanings, toggle.confirm(), "confirm");
      }
      case Entry.Lettered lettered -> {
        mean(meanings, lettered.advance(), "end of a letter");
        mean(meanings, lettered.erase(), "erase");
        mean(meanings, lettered.clear(), "clear");
        mean(meanings, lettered.confirm(), "confirm");
        keys.letters().keySet().forEach(key -> mean(meanings, key, "a letter"));
      }
      case Entry.WordByNumber words -> {
        mean(meanings, words.erase(), "erase");
        mean(meanings, words.confirm(), "confirm");
        keys.direct().keySet().forEach(key -> mean(meanings, key, "a digit"));
      }
      case Entry.WordByScroll words -> {
        moves(meanings, words.next(), words.previous());
        mean(meanings, words.add(), "add a word");
        mean(meanings, words.erase(), "erase");
        mean(meanings, words.confirm(), "confirm");
      }
      case Entry.Hear hear -> {
        // Takes no keys.
      }
    }
  }

  private static void moves(Map<String, List<String>> meanings, String next, String previous) {
    mean(meanings, next, "next");
    mean(meanings, previous, "previous");
  }
}
