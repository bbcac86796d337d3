package keenward.core.quantities;

import java.util.List;
import java.util.Map;

/**
 * The charge a battery gives at its 20-hour rate.
 *
 * @param ampereHours the value
 * @param written the text on site
 */
public record Capacity(double ampereHours, String written) implements Quantity {

  private static final Units UNITS =
      new Units("a battery capacity such as 7 Ah", Map.of("Ah", "1", "mAh", "0.001"), "0", "10000");

  /** Reads a battery capacity such as 7 Ah. */
  public static Parsed<Capacity> parse(String text) {
    return UNITS.parse(text, (value, written) -> new Capacity(value.doubleValue(), written));
  }

  /** The units that {@link #parse} knows, as written. */
  public static List<String> units() {
    return UNITS.names();
  }
}
