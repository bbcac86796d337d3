package keenward.core.quantities;

import java.util.List;
import java.util.Map;

/**
 * An electric potential difference.
 *
 * @param volts the value
 * @param written the text on site
 */
public record Voltage(double volts, String written) implements Quantity {

  private static final Units UNITS =
      new Units("a voltage such as 13.6 V", Map.of("V", "1", "mV", "0.001"), "0", "1000");

  /** Reads a voltage such as 13.6 V. */
  public static Parsed<Voltage> parse(String text) {
    return UNITS.parse(text, (value, written) -> new Voltage(value.doubleValue(), written));
  }

  /** The units that {@link #parse} knows, as written. */
  public static List<String> units() {
    return UNITS.names();
  }
}
