package keenward.core.quantities;

import java.util.List;
import java.util.Map;

/**
 * An electric current.
 *
 * @param milliamps the value
 * @param written the text on site
 */
public record Current(double milliamps, String written) implements Quantity {

  private static final Units UNITS =
      new Units(
          "a current such as 12 mA",
          Map.of("mA", "1", "A", "1000", "uA", "0.001", "µA", "0.001"),
          "0",
          "1000000");

  /** Reads a current such as 12 mA. */
  public static Parsed<Current> parse(String text) {
    return UNITS.parse(text, (value, written) -> new Current(value.doubleValue(), written));
  }

  /** The units that {@link #parse} knows, as written. */
  public static List<String> units() {
    return UNITS.names();
  }
}
