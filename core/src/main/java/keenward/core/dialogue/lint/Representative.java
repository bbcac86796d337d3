package keenward.core.dialogue.lint;

import java.util.Set;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.Value;

/** A value that stands for all those of a type that nobody asks for. */
final class Representative {
  private static final int MOST_TRIES = 100;

  private Representative() {}

  /** A value of the type that is none of {@code others}. */
  static Value other(FieldType type, Set<Value> others) {
    for (int number = 0; number < MOST_TRIES; number++) {
      Value value = value(type, number);
      if (!others.contains(value)) {
        return value;
      }
    }
    throw new IllegalStateException("too many values are asked for");
  }

  private static Value value(FieldType type, int number) {
    return switch (type) {
      case FieldType.WholeNumber whole ->
          new Value.Whole(
              whole.least()
                  + number % ((whole.most() - whole.least()) / whole.step() + 1) * whole.step());
      case FieldType.Choice choice ->
          new Value.Word(choice.options().get(number % choice.options().size()).word());
      case FieldType.OptionSet set -> new Value.Members(number);
      case FieldType.Digits digits -> new Value.Text(digits(number, digits.most()));
      case FieldType.FreeText text -> new Value.Text(digits(number, text.length()));
      case FieldType.WordSequence words ->
          new Value.Words(words.words().subList(0, Math.min(number, words.most())));
      case FieldType.Serial serial -> new Value.Text(digits(number, serial.most()));
      case FieldType.Code code -> new Value.Secret("other " + number);
    };
  }

  private static String digits(int number, int length) {
    StringBuilder text = new StringBuilder(Integer.toString(number));
    while (text.length() < length) {
      text.insert(0, '0');
    }
    return text.substring(text.length() - length);
  }
}
