package keenward.core.quantities;

import java.util.List;
import java.util.Map;

/**
 * A radio frequency.
 *
 * @param megahertz the value
 * @param written the text on site
 */
public record Frequency(double megahertz, String written) implements Quantity {

  private static final Units UNITS =
      new Units(
          "a frequency such as 868.3 MHz",
          Map.of("MHz", "1", "GHz", "1000", "kHz", "0.001"),
          "0",
          "100000");

  /** Reads a frequency such as 868.3 MHz. */
  public static Parsed<Frequency> parse(String text) {
    return UNITS.parse(text, (value, written) -> new Frequency(value.doubleValue(), written));
  }

  /** The units that {@link #parse} knows, as written. */
  public static List<String> units() {
    return UNITS.names();
  }
}
