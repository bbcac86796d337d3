package keenward.core.building;

import java.math.BigDecimal;
import java.math.RoundingMode;
import keenward.core.plan.Point;

/** Numbers in messages. */
final class Texts {

  private Texts() {}

  /** A length to the millimetre, such as {@code 1.25 m}. */
  static String metres(double metres) {
    return number(metres) + " m";
  }

  /** A place as a plan writes it, such as {@code [6, 0]}. */
  static String place(Point point) {
    return "[" + number(point.xMetres()) + ", " + number(point.yMetres()) + "]";
  }

  private static String number(double value) {
    if (!Double.isFinite(value)) {
      return "an impossible number of";
    }
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(3, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }
}
