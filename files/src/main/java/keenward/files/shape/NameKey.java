package keenward.files.shape;

import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Pattern;

/**
 * What the names of a map have to be.
 *
 * @param label what is named, such as "a zone number"
 * @param expectation words to follow "expected"
 * @param expression regular expression from ^ to $ that a name has to match, of what Java and ECMA
 *     have in common
 * @param refused names that are words of the format
 * @param value the key that a matching name stands for
 */
public record NameKey<K>(
    String label,
    String expectation,
    String expression,
    Set<String> refused,
    Function<String, K> value) {

  /** The most characters of a name. */
  public static final int MOST = 60;

  static final Shape<String> TEXT = new TextShape(MOST, false);

  /**
   * Names as people give them: up to 60 characters, no blank at either end, not the word {@code
   * unknown}.
   *
   * @param label what is named, such as "a room"
   */
  public static NameKey<String> name(String label, String... refusedWords) {
    Set<String> refused = new TreeSet<>(Set.of(refusedWords));
    refused.add(UnknownOrShape.WORD);
    return new NameKey<>(
        "the name of " + label,
        "a name of up to "
            + MOST
            + " characters without blanks at its ends, other than "
            + String.join(" and ", refused),
        "^[^ ](.{0," + (MOST - 2) + "}[^ ])?$",
        refused,
        Function.identity());
  }

  /** Whole numbers from 1 without leading zeros, of up to that many digits. */
  public static NameKey<Integer> number(String label, int digits) {
    return new NameKey<>(
        label,
        "a whole number from 1 to " + "9".repeat(digits),
        "^[1-9][0-9]{0," + (digits - 1) + "}$",
        Set.of(),
        Integer::valueOf);
  }

  Optional<K> read(String name) {
    return Pattern.matches(expression, name) && !refused.contains(name)
        ? Optional.of(value.apply(name))
        : Optional.empty();
  }
}
