package keenward.core.building;

import java.math.BigDecimal;
import java.math.RoundingMode;
import keenward.core.plan.DrawingUnit;
import keenward.core.plan.Point;

/**
 * Numbers in messages, in the unit of the floor's coordinates, so that they can be found in the
 * file.
 *
 * @param unit the unit
 */
public record Texts(DrawingUnit unit) {

  private static final double METRES_A_FOOT = 0.3048;

  /** A length to a thousandth, such as {@code 1.25 m}. */
  public String length(double metres) {
    return number(metres) + " " + unit.word();
  }

  /** A place as a plan writes it, such as {@code [6, 0]}. */
  public String place(Point point) {
    return "[" + number(point.xMetres()) + ", " + number(point.yMetres()) + "]";
  }

  private String number(double metres) {
    if (!Double.isFinite(metres)) {
      return "an impossible number of";
    }
    double value =
        switch (unit) {
          case METRES -> metres;
          case FEET -> metres / METRES_A_FOOT;
        };
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }
}
