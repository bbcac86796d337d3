package keenward.core.quantities;

import java.util.List;
import java.util.Map;

/**
 * A sound pressure level, A-weighted.
 *
 * @param decibels the value, relative to 20 micropascals
 * @param written the text on site
 */
public record SoundLevel(double decibels, String written) implements Quantity {

  private static final Units UNITS =
      new Units("a sound level such as 95 dB", Map.of("dB", "1", "dBA", "1"), "0", "200");

  /** Reads a sound level such as 95 dB. */
  public static Parsed<SoundLevel> parse(String text) {
    return UNITS.parse(text, (value, written) -> new SoundLevel(value.doubleValue(), written));
  }

  /** The units that {@link #parse} knows, as written. */
  public static List<String> units() {
    return UNITS.names();
  }
}
