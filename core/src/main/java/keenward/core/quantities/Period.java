package keenward.core.quantities;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A length of time on the calendar: whole months, since service intervals are not a number of days.
 *
 * @param months the length
 * @param written the text on site
 */
public record Period(int months, String written) implements Quantity {

  private static final String EXPECTATION = "a period such as 12 months or 5 y";
  private static final Units UNITS =
      new Units(
          EXPECTATION,
          Map.of("months", "1", "month", "1", "y", "12", "years", "12", "year", "12"),
          "1",
          "1200");

  /** Reads a period such as 12 months or 5 y; a part of a month is refused. */
  public static Parsed<Period> parse(String text) {
    Parsed<BigDecimal> exact = UNITS.parse(text, (value, written) -> value);
    BigDecimal value = exact.value();
    if (value == null) {
      return Parsed.expected(Objects.requireNonNull(exact.expected()));
    }
    if (value.stripTrailingZeros().scale() > 0) {
      return Parsed.expected(EXPECTATION + ", in whole months");
    }
    return Parsed.of(new Period(value.intValueExact(), text.strip()));
  }

  /** The units that {@link #parse} knows, as written. */
  public static List<String> units() {
    return UNITS.names();
  }
}
