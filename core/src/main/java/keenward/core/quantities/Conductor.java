package keenward.core.quantities;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A conductor size, by American wire gauge or by cross-section. The resistance belongs to the
 * tables of {@code core.electrical}.
 *
 * @param gauge the system the size is given in
 * @param size the gauge number (0 for 1/0 AWG), or the cross-section in square millimetres
 * @param written the text on site
 */
public record Conductor(Gauge gauge, double size, String written) implements Quantity {

  /** How a conductor size is stated. */
  public enum Gauge {
    /** American wire gauge, a number that falls as the wire gets thicker. */
    AWG,
    /** Cross-section in square millimetres. */
    SQUARE_MILLIMETRES
  }

  private static final String EXPECTATION = "a conductor such as 22 AWG or 0.22 mm2";
  private static final Units AWG = new Units(EXPECTATION, Map.of("AWG", "1"), "0", "40");
  private static final Units AREA =
      new Units(EXPECTATION, Map.of("mm2", "1", "mm²", "1"), "0.01", "1000");

  /** Reads a conductor such as 22 AWG or 0.22 mm2; AWG numbers are whole. */
  public static Parsed<Conductor> parse(String text) {
    Parsed<Conductor> area =
        AREA.parse(
            text,
            (value, written) ->
                new Conductor(Gauge.SQUARE_MILLIMETRES, value.doubleValue(), written));
    if (area.value() != null) {
      return area;
    }
    Parsed<Conductor> gauge =
        AWG.parse(text, (value, written) -> new Conductor(Gauge.AWG, value.doubleValue(), written));
    Conductor found = gauge.value();
    return found != null && found.size() != Math.rint(found.size())
        ? Parsed.expected(EXPECTATION)
        : gauge;
  }

  /** The units that {@link #parse} knows, as written. */
  public static List<String> units() {
    return Stream.concat(AWG.names().stream(), AREA.names().stream()).toList();
  }
}
