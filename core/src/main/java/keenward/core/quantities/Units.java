package keenward.core.quantities;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/** Reads "number unit" texts exactly; every quantity parses through here. */
final class Units {

  private static final int LONGEST_TEXT = 40;

  private final String expectation;
  private final Map<String, BigDecimal> factors;
  private final BigDecimal least;
  private final BigDecimal most;

  /**
   * @param expectation what to print when a text does not fit
   * @param factors unit as written to its size in the base unit
   * @param least smallest allowed value in the base unit
   * @param most largest allowed value in the base unit
   */
  Units(String expectation, Map<String, String> factors, String least, String most) {
    this.expectation = expectation;
    this.factors = new java.util.HashMap<>();
    factors.forEach((unit, factor) -> this.factors.put(unit, new BigDecimal(factor)));
    this.least = new BigDecimal(least);
    this.most = new BigDecimal(most);
  }

  /** Reads a text and makes the quantity from the value in the base unit and the text. */
  <T> Parsed<T> parse(String text, BiFunction<BigDecimal, String, T> make) {
    String trimmed = text.strip();
    int split = endOfNumber(trimmed);
    BigDecimal number = number(trimmed.substring(0, split));
    BigDecimal factor = factors.get(trimmed.substring(split).strip());
    if (number == null || factor == null) {
      return Parsed.expected(expectation);
    }
    BigDecimal value = number.multiply(factor);
    if (value.compareTo(least) < 0 || value.compareTo(most) > 0) {
      return Parsed.expected(
          expectation
              + ", between "
              + least.toPlainString()
              + " and "
              + most.toPlainString()
              + " in the base unit");
    }
    return Parsed.of(make.apply(value, trimmed));
  }

  /** The units as written, in alphabetical order. */
  List<String> names() {
    return factors.keySet().stream().sorted().toList();
  }

  private static int endOfNumber(String text) {
    int end = 0;
    while (end < text.length() && isNumberPart(text.charAt(end), end)) {
      end++;
    }
    return end;
  }

  private static boolean isNumberPart(char character, int index) {
    return (character >= '0' && character <= '9')
        || character == '.'
        || (character == '-' && index == 0);
  }

  private static @Nullable BigDecimal number(String text) {
    // An exponent or a lone sign never reaches BigDecimal, so its size is bounded by the text's.
    if (text.isEmpty()
        || text.length() > LONGEST_TEXT
        || text.endsWith(".")
        || text.endsWith("-")
        || text.startsWith(".")
        || text.startsWith("-.")
        || text.indexOf('.') != text.lastIndexOf('.')) {
      return null;
    }
    return new BigDecimal(text);
  }
}
