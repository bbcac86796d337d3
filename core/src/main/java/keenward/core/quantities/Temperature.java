package keenward.core.quantities;

import java.util.List;
import java.util.Map;

/**
 * A temperature.
 *
 * @param celsius the value
 * @param written the text on site
 */
public record Temperature(double celsius, String written) implements Quantity {

  private static final Units UNITS =
      new Units("a temperature such as 10 C", Map.of("C", "1", "°C", "1"), "-80", "120");

  /** Reads a temperature such as 10 C. */
  public static Parsed<Temperature> parse(String text) {
    return UNITS.parse(text, (value, written) -> new Temperature(value.doubleValue(), written));
  }

  /** The units that {@link #parse} knows, as written. */
  public static List<String> units() {
    return UNITS.names();
  }
}
