package keenward.core.electrical;

/**
 * How long a battery lasts at a steady current: t = H (C / (I H))^k, with C the capacity at the
 * H-hour rate. The exponent is 1.05 to 1.15 for absorbed-glass-mat and 1.10 to 1.25 for gel
 * batteries (handbook ranges, from memory).
 */
public final class Peukert {
  /**
   * Exponent used where nothing better is known: the upper end of the range for absorbed-glass-mat
   * batteries.
   */
  public static final double USUAL_EXPONENT = 1.15;

  /** Hours of the rate at which small sealed batteries are marked. */
  public static final double RATED_HOURS = 20;

  /** What to print beside the result. */
  public static final String SOURCE =
      "Peukert's law, exponent 1.15 (upper end for absorbed-glass-mat batteries, from memory); no credit below the"
          + " 20-hour rate";

  private Peukert() {}

  /**
   * Hours at a steady current.
   *
   * @param ampereHours capacity at the 20-hour rate
   * @param amperes current, more than 0
   * @param exponent Peukert's exponent, at least 1
   */
  public static double hours(double ampereHours, double amperes, double exponent) {
    if (!(amperes > 0) || !(ampereHours >= 0) || !(exponent >= 1)) {
      throw new IllegalArgumentException(
          "expected capacity of at least 0 Ah, current above 0 A, exponent of at least 1");
    }
    return RATED_HOURS * Math.pow(ampereHours / (amperes * RATED_HOURS), exponent);
  }

  /**
   * Hours at a steady current, where a current below the 20-hour rate earns nothing: there the law
   * would promise more than the marked capacity.
   */
  public static double carefulHours(double ampereHours, double amperes, double exponent) {
    return Math.min(hours(ampereHours, amperes, exponent), ampereHours / amperes);
  }
}
