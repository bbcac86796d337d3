package keenward.core.quantities;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A length of time on a clock, exact to the millisecond.
 *
 * @param milliseconds the length
 * @param written the text on site
 */
public record Span(long milliseconds, String written) implements Quantity {

  private static final String EXPECTATION = "a time such as 45 s, 5 min or 24 h";
  private static final Units UNITS =
      new Units(
          EXPECTATION,
          Map.of("ms", "1", "s", "1000", "min", "60000", "h", "3600000", "d", "86400000"),
          "0",
          "31622400000");

  /** Reads a time such as 45 s, 5 min or 24 h; finer than a millisecond is refused, not rounded. */
  public static Parsed<Span> parse(String text) {
    Parsed<BigDecimal> exact = UNITS.parse(text, (value, written) -> value);
    BigDecimal value = exact.value();
    if (value == null) {
      return Parsed.expected(Objects.requireNonNull(exact.expected()));
    }
    if (value.stripTrailingZeros().scale() > 0) {
      return Parsed.expected(EXPECTATION + ", to the millisecond");
    }
    return Parsed.of(new Span(value.longValueExact(), text.strip()));
  }

  /** A length of whole seconds, written the usual way. */
  public static Span ofSeconds(long seconds) {
    return new Span(
        seconds * 1000,
        seconds >= 120 && seconds % 60 == 0 ? seconds / 60 + " min" : seconds + " s");
  }

  /** The length in seconds. */
  public double seconds() {
    return milliseconds / 1000.0;
  }

  /** The units that {@link #parse} knows, as written. */
  public static List<String> units() {
    return UNITS.names();
  }
}
