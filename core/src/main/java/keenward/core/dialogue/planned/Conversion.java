package keenward.core.dialogue.planned;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import keenward.core.dialogue.description.Field;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.PlanSource;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.TypedForm;
import keenward.core.dialogue.planned.PlanAnswer.Content;
import keenward.core.quantities.Span;
import org.jspecify.annotations.Nullable;

/** Turns what the plan says into what a field holds, or says why the field cannot hold it. */
final class Conversion {

  /**
   * What came out.
   *
   * @param value the value; null where the field cannot hold it
   * @param problem why not, in the words that follow "the panel cannot hold ..."
   * @param expected what the field can hold
   * @param note how it was written, where that differs from the plan
   */
  record Result(@Nullable Value value, String problem, String expected, String note) {
    static Result of(Value value) {
      return new Result(value, "", "", "");
    }
  }

  private final Field field;
  private final PlanSource.OneFact source;

  Conversion(Field field, PlanSource.OneFact source) {
    this.field = field;
    this.source = source;
  }

  Result convert(Content content) {
    return switch (content) {
      case Content.Word word -> word(word.word());
      case Content.Words words -> words(words.words());
      case Content.Count number -> number(number.number());
      case Content.Time time -> time(time);
      case Content.Text text -> text(text.text());
      case Content.Code code ->
          field.type() instanceof FieldType.Code
              ? Result.of(new Value.Secret(code.reference()))
              : cannot("a code");
      case Content.TooMuch tooMuch -> throw new IllegalArgumentException(tooMuch.what());
    };
  }

  private Result word(String word) {
    String mapped = source.words().getOrDefault(word, word);
    return switch (field.type()) {
      case FieldType.Choice choice when has(choice.options(), mapped) ->
          Result.of(new Value.Word(mapped));
      case FieldType.OptionSet set when has(set.options(), mapped) -> words(List.of(word));
      case FieldType.WholeNumber number -> typed(mapped, word);
      case FieldType.Digits digits -> typed(mapped, word);
      default -> cannot(quoted(word));
    };
  }

  private Result typed(String mapped, String word) {
    return TypedForm.read(field.type(), mapped)
        .map(Result::of)
        .orElseGet(() -> cannot(quoted(word)));
  }

  private Result words(List<String> words) {
    if (field.type() instanceof FieldType.OptionSet set) {
      long bits = 0;
      for (String word : words) {
        int index = index(set.options(), source.words().getOrDefault(word, word));
        if (index < 0) {
          return cannot(quoted(word));
        }
        bits |= 1L << index;
      }
      return Result.of(new Value.Members(bits));
    }
    return words.size() == 1 ? word(words.get(0)) : cannot(quoted(String.join(", ", words)));
  }

  private Result number(long number) {
    return switch (field.type()) {
      case FieldType.WholeNumber whole -> whole(whole, number, 1, Long.toString(number));
      case FieldType.Digits digits ->
          typed(padded(Long.toString(number), digits.least()), "" + number);
      default -> word(Long.toString(number));
    };
  }

  private Result time(Content.Time time) {
    for (Map.Entry<String, String> entry : source.words().entrySet()) {
      Span span = Span.parse(entry.getKey()).value();
      if (span != null && span.milliseconds() == time.milliseconds()) {
        return word(entry.getKey());
      }
    }
    if (field.type() instanceof FieldType.Choice choice) {
      for (FieldType.Option option : choice.options()) {
        Span span = Span.parse(option.word()).value();
        if (span != null && span.milliseconds() == time.milliseconds()) {
          return Result.of(new Value.Word(option.word()));
        }
      }
    }
    return field.type() instanceof FieldType.WholeNumber whole && unit(whole.unit()) > 0
        ? whole(whole, time.milliseconds(), unit(whole.unit()), time.written())
        : cannot(quoted(time.written()));
  }

  private Result whole(FieldType.WholeNumber type, long amount, long unit, String written) {
    long one = unit * type.scale();
    if (amount % one != 0 || amount / one > Integer.MAX_VALUE) {
      return cannot(quoted(written));
    }
    int number = (int) (amount / one);
    boolean inRange =
        number >= type.least()
            && number <= type.most()
            && (number - type.least()) % type.step() == 0;
    boolean special = type.specials().stream().anyMatch(each -> each.number() == number);
    return inRange || special ? Result.of(new Value.Whole(number)) : cannot(quoted(written));
  }

  private Result text(String text) {
    String mapped = source.words().getOrDefault(text, text);
    return switch (field.type()) {
      case FieldType.FreeText type -> name(type, mapped);
      case FieldType.WordSequence type -> wordSequence(type, mapped);
      case FieldType.Digits type -> typed(mapped.toUpperCase(Locale.ROOT), text);
      case FieldType.Serial type -> typed(mapped.toUpperCase(Locale.ROOT), text);
      default -> word(text);
    };
  }

  private Result name(FieldType.FreeText type, String text) {
    String written = Lettering.withLetters(text, type.letters());
    if (written.length() > type.length()) {
      if (!source.shorten()) {
        return cannot(quoted(text));
      }
      written = Lettering.shortened(written, type.length());
    }
    if (written.isEmpty()) {
      return cannot(quoted(text));
    }
    String note =
        written.equalsIgnoreCase(text) ? "" : quoted(text) + " is written " + quoted(written);
    return new Result(new Value.Text(written), "", "", note);
  }

  private Result wordSequence(FieldType.WordSequence type, String text) {
    List<String> words = new ArrayList<>();
    for (String part : Words.split(text)) {
      String wanted = source.words().getOrDefault(part, part);
      String found = "";
      for (String word : type.words()) {
        if (word.equalsIgnoreCase(wanted)) {
          found = word;
        }
      }
      if (found.isEmpty()) {
        return cannot("the word " + quoted(part) + " of " + quoted(text));
      }
      words.add(found);
    }
    return words.size() > type.most() ? cannot(quoted(text)) : Result.of(new Value.Words(words));
  }

  private Result cannot(String what) {
    return new Result(null, what, Expectation.of(field.type()), "");
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

  /** Milliseconds of a unit of time, or 0. */
  static long unit(String unit) {
    return switch (unit) {
      case "s" -> 1_000;
      case "min" -> 60_000;
      case "h" -> 3_600_000;
      default -> 0;
    };
  }

  private static String padded(String digits, int length) {
    StringBuilder text = new StringBuilder(digits);
    while (text.length() < length) {
      text.insert(0, '0');
    }
    return text.toString();
  }

  private static String quoted(String text) {
    return "'" + text + "'";
  }
}
