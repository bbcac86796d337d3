package keenward.core.dialogue.machine;

import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.Value;

/** How values are typed as digits, and what typed digits mean. */
public final class TypedForm {
  private TypedForm() {}

  /** The value that {@code typed} means for a field of this type, if it means one. */
  public static Optional<Value> read(FieldType type, String typed) {
    return switch (type) {
      case FieldType.WholeNumber number -> readNumber(number, typed);
      case FieldType.Choice choice -> {
        for (FieldType.Option option : choice.options()) {
          if (option.code().equals(typed)) {
            yield Optional.of(new Value.Word(option.word()));
          }
        }
        yield Optional.empty();
      }
      case FieldType.OptionSet set ->
          set.written() == FieldType.Written.SUM ? readSum(set, typed) : readList(set, typed);
      case FieldType.Digits digits ->
          fits(typed, digits.least(), digits.most(), digits.hexadecimal())
              ? Optional.of(new Value.Text(typed))
              : Optional.empty();
      case FieldType.Serial serial ->
          fits(typed, serial.least(), serial.most(), serial.hexadecimal())
              ? Optional.of(new Value.Text(typed))
              : Optional.empty();
      case FieldType.FreeText text ->
          typed.length() <= text.length() && consistsOf(typed, text.letters())
              ? Optional.of(new Value.Text(typed))
              : Optional.empty();
      case FieldType.WordSequence words -> Optional.empty();
      case FieldType.Code code -> Optional.empty();
    };
  }

  /** What must be typed for {@code value}, without leading zeros beyond the type's own. */
  public static Optional<String> write(FieldType type, Value value) {
    return switch (type) {
      case FieldType.WholeNumber number when value instanceof Value.Whole whole -> {
        for (FieldType.Special special : number.specials()) {
          if (special.number() == whole.number()) {
            yield Optional.of(special.typed());
          }
        }
        yield Optional.of(padded(whole.number(), number.width()));
      }
      case FieldType.Choice choice when value instanceof Value.Word word -> {
        for (FieldType.Option option : choice.options()) {
          if (option.word().equals(word.word())) {
            yield option.code().isEmpty() ? Optional.empty() : Optional.of(option.code());
          }
        }
        yield Optional.empty();
      }
      case FieldType.OptionSet set when value instanceof Value.Members members ->
          Optional.of(writeSet(set, members));
      case FieldType.Digits digits when value instanceof Value.Text text ->
          Optional.of(text.text());
      case FieldType.Serial serial when value instanceof Value.Text text ->
          Optional.of(text.text());
      case FieldType.FreeText letters when value instanceof Value.Text text ->
          Optional.of(text.text());
      default -> Optional.empty();
    };
  }

  static String padded(int number, int width) {
    StringBuilder text = new StringBuilder(Integer.toString(number));
    while (text.length() < width) {
      text.insert(0, '0');
    }
    return text.toString();
  }

  static boolean isDigit(char character, boolean hexadecimal) {
    return (character >= '0' && character <= '9')
        || (hexadecimal && character >= 'A' && character <= 'F');
  }

  /** A number of at most nine digits, or -1. */
  static int number(String typed) {
    if (typed.isEmpty() || typed.length() > 9) {
      return -1;
    }
    int number = 0;
    for (int place = 0; place < typed.length(); place++) {
      char digit = typed.charAt(place);
      if (digit < '0' || digit > '9') {
        return -1;
      }
      number = number * 10 + (digit - '0');
    }
    return number;
  }

  static boolean fits(String typed, int least, int most, boolean hexadecimal) {
    if (typed.length() < least || typed.length() > most) {
      return false;
    }
    for (int place = 0; place < typed.length(); place++) {
      if (!isDigit(typed.charAt(place), hexadecimal)) {
        return false;
      }
    }
    return true;
  }

  private static Optional<Value> readNumber(FieldType.WholeNumber type, String typed) {
    for (FieldType.Special special : type.specials()) {
      if (special.typed().equals(typed)) {
        return Optional.of(new Value.Whole(special.number()));
      }
    }
    int number = number(typed);
    boolean allowed =
        number >= type.least()
            && number <= type.most()
            && (number - type.least()) % type.step() == 0;
    return allowed ? Optional.of(new Value.Whole(number)) : Optional.empty();
  }

  private static Optional<Value> readSum(FieldType.OptionSet type, String typed) {
    int sum = number(typed);
    if (sum < 0) {
      return Optional.empty();
    }
    long bits = 0;
    for (int index = 0; index < type.options().size(); index++) {
      int weight = number(type.options().get(index).code());
      if (weight > 0 && (sum & weight) != 0) {
        bits |= 1L << index;
        sum &= ~weight;
      }
    }
    return sum == 0 ? Optional.of(new Value.Members(bits)) : Optional.empty();
  }

  private static Optional<Value> readList(FieldType.OptionSet type, String typed) {
    long bits = 0;
    for (int place = 0; place < typed.length(); place++) {
      int index = indexOfCode(type.options(), typed.substring(place, place + 1));
      if (index < 0) {
        return typed.equals("0") ? Optional.of(new Value.Members(0)) : Optional.empty();
      }
      if (((bits >>> index) & 1L) != 0) {
        return Optional.empty();
      }
      bits |= 1L << index;
    }
    return Optional.of(new Value.Members(bits));
  }

  private static String writeSet(FieldType.OptionSet type, Value.Members members) {
    StringBuilder list = new StringBuilder();
    int sum = 0;
    for (int index = 0; index < type.options().size(); index++) {
      if (members.contains(index)) {
        list.append(type.options().get(index).code());
        sum += Math.max(0, number(type.options().get(index).code()));
      }
    }
    if (type.written() == FieldType.Written.SUM) {
      return Integer.toString(sum);
    }
    return list.isEmpty() ? "0" : list.toString();
  }

  static int indexOfCode(List<FieldType.Option> options, String code) {
    for (int index = 0; index < options.size(); index++) {
      if (options.get(index).code().equals(code)) {
        return index;
      }
    }
    return -1;
  }

  private static boolean consistsOf(String text, String letters) {
    for (int place = 0; place < text.length(); place++) {
      if (letters.indexOf(text.charAt(place)) < 0) {
        return false;
      }
    }
    return true;
  }
}
