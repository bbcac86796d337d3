package keenward.core.dialogue.lint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.KeypadKind;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.description.Screen;
import keenward.core.dialogue.description.Template;

/** All text fits the display that shows it, whatever the memory holds. */
final class DisplayCheck {
  private final List<LintFinding> findings;
  private final Widths widths;

  private DisplayCheck(PanelDescription description, List<LintFinding> findings) {
    this.findings = findings;
    this.widths = new Widths(description);
  }

  static void check(PanelDescription description, List<LintFinding> findings) {
    DisplayCheck check = new DisplayCheck(description, findings);
    for (Screen screen : description.screens().values()) {
      if (screen.decide().isEmpty()) {
        description.keypads().forEach(keypad -> check.check(screen, keypad));
      }
    }
  }

  private void check(Screen screen, KeypadKind keypad) {
    boolean own = screen.elsewhere().containsKey(keypad.name());
    List<Template> lines =
        own
            ? screen.elsewhere().getOrDefault(keypad.name(), List.of())
            : keypad.shows() == KeypadKind.Shows.TEXT ? screen.lines() : List.of();
    String place =
        own
            ? Places.of("screens", screen.name(), "on", keypad.name())
            : Places.of("screens", screen.name(), "shows");
    switch (keypad.shows()) {
      case TEXT -> checkText(screen, keypad, lines, place);
      case WORDS -> checkWords(screen, keypad, lines, place, keypad.digits());
      case LAMPS -> checkWords(screen, keypad, lines, place, 0);
    }
  }

  private void checkText(Screen screen, KeypadKind keypad, List<Template> lines, String place) {
    if (lines.size() > keypad.lines()) {
      add(
          place,
          lines.size() + " lines on the " + keypad.lines() + " of keypad " + keypad.name(),
          "show fewer lines");
    }
    for (int index = 0; index < lines.size(); index++) {
      int width = widths.of(screen, lines.get(index));
      if (width > keypad.columns()) {
        add(
            place + "/" + index,
            "may be "
                + width
                + " characters wide on the "
                + keypad.columns()
                + " of keypad "
                + keypad.name(),
            "shorten the fixed text, or what the field shows");
      }
    }
  }

  /** Words and lamps: nothing but what the keypad has, and no more digits than it has. */
  private void checkWords(
      Screen screen, KeypadKind keypad, List<Template> lines, String place, int mostDigits) {
    for (int index = 0; index < lines.size(); index++) {
      int digits = 0;
      for (Template.Part part : lines.get(index).parts()) {
        if (part instanceof Template.Literal literal) {
          digits += checkLiteral(keypad, literal.text(), place + "/" + index);
        } else if (part instanceof Template.FieldText field) {
          digits += checkField(screen, keypad, field, place + "/" + index);
        } else {
          digits += widths.of(screen, new Template(List.of(part)));
        }
      }
      if (digits > mostDigits) {
        add(
            place + "/" + index,
            "needs up to " + digits + " digits; keypad " + keypad.name() + " has " + mostDigits,
            "show less there");
      }
    }
  }

  private int checkLiteral(KeypadKind keypad, String text, String place) {
    String rest = text;
    // Longest first, so that a word of several parts counts as one.
    List<String> words = new ArrayList<>(keypad.words());
    words.sort(Comparator.comparingInt(String::length).reversed());
    for (String word : words) {
      rest = rest.replace(word, " ");
    }
    int digits = 0;
    StringBuilder left = new StringBuilder();
    for (int at = 0; at < rest.length(); at++) {
      char character = rest.charAt(at);
      if (character >= '0' && character <= '9') {
        digits++;
      } else if (character != ' ') {
        left.append(character);
      }
    }
    if (!left.isEmpty()) {
      add(
          place,
          "keypad " + keypad.name() + " cannot show '" + text + "'",
          "use its words: " + String.join(", ", keypad.words()));
    }
    return digits;
  }

  private int checkField(Screen screen, KeypadKind keypad, Template.FieldText part, String place) {
    int digits = 0;
    for (Field field : widths.fields(screen, part.field())) {
      if (field.type() instanceof FieldType.Choice choice) {
        for (FieldType.Option option : choice.options()) {
          digits = Math.max(digits, checkLiteral(keypad, option.shown(), place));
        }
      } else {
        digits = Math.max(digits, Math.max(part.width(), Widths.of(field.type())));
        if (!(field.type() instanceof FieldType.WholeNumber
            || field.type() instanceof FieldType.Digits
            || field.type() instanceof FieldType.Serial)) {
          add(
              place,
              "keypad " + keypad.name() + " cannot show " + field.name(),
              "show only numbers and its own words there");
        }
      }
    }
    return digits;
  }

  private void add(String place, String what, String remedy) {
    findings.add(new LintFinding(LintSeverity.ERROR, place, what, remedy));
  }
}
