package keenward.core.quantities;

import java.util.List;
import java.util.Map;

/**
 * An angle, clockwise from the plan's north (the positive y axis) where it is a bearing.
 *
 * @param degrees the value
 * @param written the text on site
 */
public record Angle(double degrees, String written) implements Quantity {

  private static final Units UNITS =
      new Units("an angle such as 225 deg", Map.of("deg", "1"), "-360", "360");

  /** Reads an angle such as 225 deg. */
  public static Parsed<Angle> parse(String text) {
    return UNITS.parse(text, (value, written) -> new Angle(value.doubleValue(), written));
  }

  /** The units that {@link #parse} knows, as written. */
  public static List<String> units() {
    return UNITS.names();
  }
}
