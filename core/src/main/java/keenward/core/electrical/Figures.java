package keenward.core.electrical;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers in print: a decimal point in every locale, at most three decimals, no trailing zeros. */
public final class Figures {
  private static final int DECIMALS = 3;

  private Figures() {}

  /** The number with at most three decimals, rounded half up. */
  public static String text(double number) {
    BigDecimal rounded = BigDecimal.valueOf(number).setScale(DECIMALS, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
