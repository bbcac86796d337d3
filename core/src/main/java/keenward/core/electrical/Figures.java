package keenward.core.electrical;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Set;

/** Numbers in print: a decimal point in every locale, a few decimals, no trailing zeros. */
public final class Figures {
  private static final int DECIMALS = 3;
  private static final int COARSE_DECIMALS = 1;
  private static final Set<String> COARSE_UNITS = Set.of("h", "%", "dB", "dBm", "in a million");
  // Digits beyond these are binary noise, and must not decide how 1.8885 is rounded.
  private static final MathContext SIGNIFICANT = new MathContext(12);

  private Figures() {}

  /** The number with at most three decimals, rounded half up. */
  public static String text(double number) {
    return text(number, DECIMALS);
  }

  /**
   * The number with the decimals that its unit deserves: one for hours, shares and decibels, else
   * three.
   */
  public static String text(double number, String unit) {
    boolean coarse = COARSE_UNITS.contains(unit);
    return text(number, coarse ? COARSE_DECIMALS : DECIMALS);
  }

  /** Volts rounded down to hundredths: print never shows what is not reached. */
  public static String voltsReached(double volts) {
    return text(Math.floor(volts * 100) / 100) + " V";
  }

  private static String text(double number, int decimals) {
    BigDecimal rounded =
        BigDecimal.valueOf(number).round(SIGNIFICANT).setScale(decimals, RoundingMode.HALF_UP);
    return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
  }
}
