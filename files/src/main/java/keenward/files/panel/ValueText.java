package keenward.files.panel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.TypedForm;
import keenward.core.dialogue.planned.Expectation;
import keenward.core.quantities.Parsed;

/** Values of fields as text: in defaults, conditions, effects and found memories. */
final class ValueText {
  /** What stands for no option, no text, no transmitter, no code. */
  static final String NONE = "none";

  private ValueText() {}

  /** The value that a text means for a field of this type; a refusal says what would be right. */
  static Parsed<Value> parse(FieldType type, String text) {
    Optional<Value> value = value(type, text);
    return value.map(Parsed::of).orElseGet(() -> Parsed.expected(expectation(type)));
  }

  private static Optional<Value> value(FieldType type, String text) {
    return switch (type) {
      case FieldType.WholeNumber number -> number(number, text);
      case FieldType.Choice choice ->
          has(choice.options(), text) ? Optional.of(new Value.Word(text)) : Optional.empty();
      case FieldType.OptionSet set -> members(set, text);
      case FieldType.WordSequence words -> words(words, text);
      case FieldType.FreeText letters when text.equals(NONE) -> Optional.of(new Value.Text(""));
      case FieldType.Code code when !text.equals(NONE) -> Optional.of(new Value.Secret(text));
      default -> text.equals(NONE) ? Optional.of(Value.nothing()) : TypedForm.read(type, text);
    };
  }

  private static Optional<Value> number(FieldType.WholeNumber type, String text) {
    int number;
    try {
      number = Integer.parseInt(text);
    } catch (NumberFormatException noNumber) {
      return Optional.empty();
    }
    boolean inRange =
        number >= type.least()
            && number <= type.most()
            && (number - type.least()) % type.step() == 0;
    boolean special = type.specials().stream().anyMatch(each -> each.number() == number);
    return inRange || special ? Optional.of(new Value.Whole(number)) : Optional.empty();
  }

  private static Optional<Value> members(FieldType.OptionSet type, String text) {
    long bits = 0;
    if (!text.equals(NONE)) {
      for (String word : Splitter.split(text, "+")) {
        int index = index(type.options(), word.strip());
        if (index < 0) {
          return Optional.empty();
        }
        bits |= 1L << index;
      }
    }
    return Optional.of(new Value.Members(bits));
  }

  private static Optional<Value> words(FieldType.WordSequence type, String text) {
    List<String> words = new ArrayList<>();
    if (!text.equals(NONE)) {
      for (String word : Splitter.split(text, "+")) {
        if (!type.words().contains(word.strip())) {
          return Optional.empty();
        }
        words.add(word.strip());
      }
    }
    return words.size() <= type.most() ? Optional.of(new Value.Words(words)) : Optional.empty();
  }

  static String expectation(FieldType type) {
    String right = Expectation.of(type);
    return switch (type) {
      case FieldType.WholeNumber number ->
          number.least()
              + " to "
              + number.most()
              + (number.step() > 1 ? " in steps of " + number.step() : "");
      case FieldType.OptionSet set -> right + ", joined by +, or none";
      case FieldType.WordSequence words -> right + ", joined by +, or none";
      case FieldType.Choice choice -> right;
      case FieldType.Code code -> "the reference of a code, or none";
      default -> right + ", or none";
    };
  }

  private static boolean has(List<FieldType.Option> options, String word) {
    return index(options, word) >= 0;
  }

  private static int index(List<FieldType.Option> options, String word) {
    for (int index = 0; index < options.size(); index++) {
      if (options.get(index).word().equals(word)) {
        return index;
      }
    }
    return -1;
  }
}
