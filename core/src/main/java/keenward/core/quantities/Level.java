package keenward.core.quantities;

import java.util.List;
import java.util.Map;

/**
 * A power level relative to one milliwatt.
 *
 * @param decibelMilliwatts the value
 * @param written the text on site
 */
public record Level(double decibelMilliwatts, String written) implements Quantity {

  private static final Units UNITS =
      new Units("a level such as -105 dBm", Map.of("dBm", "1"), "-200", "100");

  /** Reads a level such as -105 dBm. */
  public static Parsed<Level> parse(String text) {
    return UNITS.parse(text, (value, written) -> new Level(value.doubleValue(), written));
  }

  /** The units that {@link #parse} knows, as written. */
  public static List<String> units() {
    return UNITS.names();
  }
}
