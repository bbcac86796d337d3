package keenward.core.quantities;

import java.util.List;
import java.util.Map;

/**
 * An electric resistance.
 *
 * @param ohms the value
 * @param written the text on site
 */
public record Resistance(double ohms, String written) implements Quantity {

  private static final Units UNITS =
      new Units(
          "a resistance such as 4.7 kohm",
          Map.of(
              "ohm", "1", "kohm", "1000", "Mohm", "1000000", "Ω", "1", "kΩ", "1000", "MΩ",
              "1000000"),
          "0",
          "1000000000");

  /** Reads a resistance such as 4.7 kohm. */
  public static Parsed<Resistance> parse(String text) {
    return UNITS.parse(text, (value, written) -> new Resistance(value.doubleValue(), written));
  }

  /** The units that {@link #parse} knows, as written. */
  public static List<String> units() {
    return UNITS.names();
  }
}
