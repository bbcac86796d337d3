package keenward.core.electrical.loop;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** Preferred values of resistors (IEC 60063) and the tolerance that usually goes with them. */
public final class StandardValues {

  /** The series E24; a list, since it does not follow its own formula (IEC 60063). */
  private static final List<Integer> E24 =
      List.of(
          10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75,
          82, 91);

  private static final double E24_SHARE = 0.05;
  private static final double E96_SHARE = 0.01;
  private static final double ROUNDING = 1e-9;

  private StandardValues() {}

  /**
   * The usual tolerance of a value, as a share of it: 5 % for those of E24 and for odd ones, 1 %
   * for those that E96 alone has.
   */
  public static double toleranceShare(double ohms) {
    return isOf(ohms, 96) && !isOf(ohms, 24) ? E96_SHARE : E24_SHARE;
  }

  /** The value of E24 nearest to a resistance, by ratio. */
  public static double nearestE24(double ohms) {
    double decade = Math.pow(10, Math.floor(Math.log10(ohms)) - 1);
    List<Double> near = new ArrayList<>();
    E24.forEach(value -> near.add(value * decade));
    near.add(100 * decade);
    return Collections.min(
        near, Comparator.comparingDouble(value -> Math.abs(Math.log(value / ohms))));
  }

  /** Whether a value belongs to the series E24 or E96. */
  static boolean isOf(double ohms, int series) {
    if (ohms <= 0) {
      return false;
    }
    int digits = series == 24 ? 2 : 3;
    double scale = Math.pow(10, Math.floor(Math.log10(ohms) + ROUNDING) - (digits - 1));
    double mantissa = ohms / scale;
    long whole = Math.round(mantissa);
    if (Math.abs(mantissa - whole) > 1e-6 * mantissa) {
      return false;
    }
    return series == 24 ? E24.contains((int) whole) : isE96(whole);
  }

  /** Every value of E96 is round(100 x 10^(i / 96)). */
  private static boolean isE96(long whole) {
    for (int i = 0; i < 96; i++) {
      if (Math.round(100 * Math.pow(10, i / 96.0)) == whole) {
        return true;
      }
    }
    return false;
  }
}
