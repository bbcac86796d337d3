package keenward.core.quantities;

import java.util.List;
import java.util.Map;

/**
 * A length or distance.
 *
 * @param metres the value
 * @param written the text on site
 */
public record Length(double metres, String written) implements Quantity {

  private static final Units UNITS =
      new Units(
          "a length such as 36 m or 120 ft",
          Map.of(
              "m", "1", "cm", "0.01", "mm", "0.001", "km", "1000", "ft", "0.3048", "in", "0.0254",
              "yd", "0.9144"),
          "0",
          "100000");

  /** Reads a length such as 36 m or 120 ft. */
  public static Parsed<Length> parse(String text) {
    return UNITS.parse(text, (value, written) -> new Length(value.doubleValue(), written));
  }

  /** The units that {@link #parse} knows, as written. */
  public static List<String> units() {
    return UNITS.names();
  }
}
