package keenward.core.dialogue.machine;

import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.Value;

/** The values that a field's type scrolls through, in order. */
final class Scrolled {
  private Scrolled() {}

  static int size(FieldType type) {
    return switch (type) {
      case FieldType.Choice choice -> choice.options().size();
      case FieldType.WholeNumber number -> (number.most() - number.least()) / number.step() + 1;
      default -> throw Interrupted.refused(Refusal.NO_MEANING);
    };
  }

  static Value at(FieldType type, int position) {
    return switch (type) {
      case FieldType.Choice choice -> new Value.Word(choice.options().get(position).word());
      case FieldType.WholeNumber number ->
          new Value.Whole(number.least() + position * number.step());
      default -> throw Interrupted.refused(Refusal.NO_MEANING);
    };
  }

  /** The place of a value, or -1 where it is not among them. */
  static int position(FieldType type, Value value) {
    if (type instanceof FieldType.Choice choice && value instanceof Value.Word word) {
      for (int index = 0; index < choice.options().size(); index++) {
        if (choice.options().get(index).word().equals(word.word())) {
          return index;
        }
      }
    }
    if (type instanceof FieldType.WholeNumber number
        && value instanceof Value.Whole whole
        && whole.number() >= number.least()
        && whole.number() <= number.most()) {
      return (whole.number() - number.least()) / number.step();
    }
    return -1;
  }
}
