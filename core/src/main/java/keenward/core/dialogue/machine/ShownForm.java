package keenward.core.dialogue.machine;

import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.Value;

/** How the panel shows a value of a field. */
public final class ShownForm {
  private ShownForm() {}

  /**
   * The text for a value. Numbers get leading zeros and other text trailing spaces up to {@code
   * width} (0: none); nothing is shown as a dash, an unknown value as question marks.
   */
  public static String of(FieldType type, Value value, int width) {
    return switch (value) {
      case Value.Whole whole -> number(type, whole.number(), width);
      case Value.Word word -> filled(word(type, word.word()), width);
      case Value.Members members -> filled(members(type, members), width);
      case Value.Text text -> filled(text.text(), width);
      case Value.Words words -> filled(String.join(" ", words.words()), width);
      case Value.Secret secret -> filled(stars(type), width);
      case Value.Nothing nothing -> filled("-", width);
      case Value.Unknown unknown -> repeated('?', Math.max(1, width));
    };
  }

  static String stars(FieldType type) {
    return repeated('*', type instanceof FieldType.Code code ? code.most() : 1);
  }

  static String repeated(char character, int count) {
    StringBuilder text = new StringBuilder();
    for (int place = 0; place < count; place++) {
      text.append(character);
    }
    return text.toString();
  }

  private static String number(FieldType type, int number, int width) {
    if (type instanceof FieldType.WholeNumber whole) {
      for (FieldType.Special special : whole.specials()) {
        if (special.number() == number) {
          return filled(special.shown(), width);
        }
      }
      return TypedForm.padded(number, Math.max(width, whole.width()));
    }
    return TypedForm.padded(number, width);
  }

  private static String word(FieldType type, String word) {
    if (type instanceof FieldType.Choice choice) {
      for (FieldType.Option option : choice.options()) {
        if (option.word().equals(word)) {
          return option.shown();
        }
      }
    }
    return word;
  }

  private static String members(FieldType type, Value.Members members) {
    StringBuilder text = new StringBuilder();
    if (type instanceof FieldType.OptionSet set) {
      for (int index = 0; index < set.options().size(); index++) {
        if (members.contains(index)) {
          text.append(text.isEmpty() ? "" : " ").append(set.options().get(index).shown());
        }
      }
    }
    return text.isEmpty() ? "-" : text.toString();
  }

  private static String filled(String text, int width) {
    StringBuilder filled = new StringBuilder(text);
    while (filled.length() < width) {
      filled.append(' ');
    }
    return filled.toString();
  }
}
