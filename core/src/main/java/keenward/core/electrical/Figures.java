package keenward.core.electrical;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers in print: a decimal point in every locale, a few decimals, no trailing zeros. */
public final class Figures {
  private static final int DECIMALS = 3;
  private static final int DECIMALS_OF_HOURS_AND_SHARES = 1;
  // Digits beyond these are binary noise, and must not decide how 1.8885 is rounded.
  private static final MathContext SIGNIFICANT = new MathContext(12);

  private Figures() {}

  /** The number with at most three decimals, rounded half up. */
  public static String text(double number) {
    return text(number, DECIMALS);
  }

  /**
   * The number with the decimals that its unit deserves: one for hours and per cent, else three.
   */
  public static String text(double number, String unit) {
    boolean coarse = unit.equals("h") || unit.equals("%");
    return text(number, coarse ? DECIMALS_OF_HOURS_AND_SHARES : DECIMALS);
  }

  private static String text(double number, int decimals) {
    BigDecimal rounded =
        BigDecimal.valueOf(number).round(SIGNIFICANT).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
