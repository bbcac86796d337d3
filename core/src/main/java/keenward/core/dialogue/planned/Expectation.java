package keenward.core.dialogue.planned;

import java.util.ArrayList;
import java.util.List;
import keenward.core.dialogue.description.FieldType;

/** What a field can hold, in words. */
public final class Expectation {
  private Expectation() {}

  /** What a field of this type can hold, such as {@code 10 to 120 s in steps of 5 s}. */
  public static String of(FieldType type) {
    return switch (type) {
      case FieldType.WholeNumber number -> number(number);
      case FieldType.Choice choice -> "one of " + words(choice.options());
      case FieldType.OptionSet set -> "any of " + words(set.options());
      case FieldType.Digits digits ->
          span(digits.least(), digits.most())
              + (digits.hexadecimal() ? " hexadecimal digits" : " digits");
      case FieldType.FreeText text -> "at most " + text.length() + " characters";
      case FieldType.WordSequence words -> "at most " + words.most() + " words of the panel's list";
      case FieldType.Serial serial ->
          "a serial of "
              + span(serial.least(), serial.most())
              + (serial.hexadecimal() ? " hexadecimal digits" : " digits");
      case FieldType.Code code -> "a code of " + span(code.least(), code.most()) + " digits";
    };
  }

  private static String number(FieldType.WholeNumber type) {
    String unit = type.unit().isEmpty() ? "" : " " + type.unit();
    StringBuilder text = new StringBuilder();
    text.append((long) type.least() * type.scale())
        .append(" to ")
        .append((long) type.most() * type.scale())
        .append(unit);
    long step = (long) type.step() * type.scale();
    if (step > 1) {
      text.append(" in steps of ").append(step).append(unit);
    }
    for (FieldType.Special special : type.specials()) {
      text.append(", or ").append(special.shown());
    }
    return text.toString();
  }

  private static String span(int least, int most) {
    return least == most ? Integer.toString(least) : least + " to " + most;
  }

  private static String words(List<FieldType.Option> options) {
    List<String> words = new ArrayList<>();
    options.forEach(option -> words.add(option.word()));
    return String.join(", ", words);
  }
}
