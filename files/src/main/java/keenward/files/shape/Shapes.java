package keenward.files.shape;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import keenward.core.plan.Worded;
import keenward.core.quantities.Parsed;

/** The vocabulary of shapes. */
public final class Shapes {

  private Shapes() {}

  /** A text on one line, of up to that many characters (16 or more). */
  public static Shape<String> text(int most) {
    return new TextShape(most, false);
  }

  /** A text that may have several lines. */
  public static Shape<String> longText(int most) {
    return new TextShape(most, true);
  }

  /** A whole number within a range, both ends included. */
  public static Shape<Integer> wholeNumber(int least, int most) {
    return new WholeNumberShape(least, most);
  }

  /** A number within a range, both ends included. */
  public static Shape<BigDecimal> decimal(String least, String most) {
    return new DecimalShape(new BigDecimal(least), new BigDecimal(most));
  }

  /** {@code yes} or {@code no}. */
  public static Shape<Boolean> yesNo() {
    Map<String, Boolean> words = new LinkedHashMap<>();
    words.put("yes", true);
    words.put("no", false);
    return new WordShape<>(words);
  }

  /** The word of a constant of a published enumeration. */
  public static <E extends Enum<E> & Worded> Shape<E> word(Class<E> enumeration) {
    Map<String, E> words = new LinkedHashMap<>();
    for (E constant : enumeration.getEnumConstants()) {
      words.put(constant.word(), constant);
    }
    return new WordShape<>(words);
  }

  /**
   * One of these words, in their order; none of them looks like a number, {@code true}, {@code
   * false} or {@code null}.
   */
  public static <T> Shape<T> words(Map<String, T> words) {
    return new WordShape<>(words);
  }

  /** Exactly this word. */
  public static Shape<String> word(String word) {
    return new WordShape<>(Map.of(word, word));
  }

  /**
   * A number with a unit.
   *
   * @param parse the quantity's own reader, such as {@code Length::parse}
   * @param units its units, such as {@code Length.units()}
   */
  public static <T> Shape<T> quantity(Function<String, Parsed<T>> parse, List<String> units) {
    return new QuantityShape<>(parse, units);
  }

  /** A day, {@code yyyy-mm-dd}, from 1900 to 2199. */
  public static Shape<LocalDate> date() {
    return new PatternShape<>(
        "a date yyyy-mm-dd",
        "^(19|20|21)[0-9][0-9]-(0[1-9]|1[0-2])-(0[1-9]|[12][0-9]|3[01])$",
        Optional.of("date"),
        Shapes::day);
  }

  private static Optional<LocalDate> day(String text) {
    try {
      return Optional.of(
          LocalDate.of(
              Integer.parseInt(text.substring(0, 4)),
              Integer.parseInt(text.substring(5, 7)),
              Integer.parseInt(text.substring(8))));
    } catch (DateTimeException noSuchDay) {
      return Optional.empty();
    }
  }

  /**
   * A text of a stated form that never looks like a plain number.
   *
   * @param expectation words to follow "expected"
   * @param expression regular expression from ^ to $, of what Java and ECMA have in common;
   *     everything that matches it has a value
   * @param value the value of a text that matches
   */
  public static <T> Shape<T> pattern(
      String expectation, String expression, Function<String, T> value) {
    return new PatternShape<>(
        expectation, expression, Optional.empty(), text -> Optional.of(value.apply(text)));
  }

  /**
   * The name of something that the same file declares.
   *
   * @param label what is named, such as "a room"
   * @param declaredAt paths of the declarations, with * for any name, such as {@code /zones/*}
   */
  public static ReferenceShape<String> reference(String label, String... declaredAt) {
    return new ReferenceShape<>(NameKey.TEXT, label, List.of(declaredAt), Set.of());
  }

  /** The number of something that the same file declares under its number. */
  public static ReferenceShape<Integer> numberReference(
      String label, int most, String... declaredAt) {
    return new ReferenceShape<>(wholeNumber(1, most), label, List.of(declaredAt), Set.of());
  }

  /** Values of one shape in order. */
  public static <T> ListShape<T> list(Shape<T> item) {
    return new ListShape<>(item, 0, Integer.MAX_VALUE, false);
  }

  /** One value, or a list of at least one. */
  public static <T> Shape<List<T>> oneOrMore(Shape<T> item) {
    return either(item.as(List::of), list(item).of(1, Integer.MAX_VALUE));
  }

  /** A map from names of the file's own to values of one shape. */
  public static <K, V> NamesShape<K, V> names(NameKey<K> key, Shape<V> value) {
    return new NamesShape<>(key, value);
  }

  /** One of two shapes. */
  public static <T> Shape<T> either(Shape<? extends T> one, Shape<? extends T> other) {
    return new EitherShape<>(List.of(one, other));
  }

  /** One of three shapes. */
  public static <T> Shape<T> either(
      Shape<? extends T> one, Shape<? extends T> second, Shape<? extends T> third) {
    return new EitherShape<>(List.of(one, second, third));
  }

  /** A map's shape that is built later, so that shapes may hold themselves. */
  public static Shape<Fields> later(Supplier<MapShape> shape) {
    return new LaterShape(shape);
  }
}
