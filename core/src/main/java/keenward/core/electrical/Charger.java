package keenward.core.electrical;

/**
 * Charging of lead-acid batteries: current = load + 1.1 x charge taken out / hours, the rule of
 * IEEE 946 style (from memory); the tenth on top is lost in the battery.
 */
public final class Charger {
  /** What to print beside a result. */
  public static final String SOURCE = "charger rule 1.1 x Ah / h, IEEE 946 style (from memory)";

  /** Charge put in for each charge taken out. */
  public static final double CHARGE_RATIO = 1.1;

  private Charger() {}

  /**
   * Current that a charger needs, in amperes.
   *
   * @param loadAmperes steady load carried at the same time
   * @param ampereHours charge to put back
   * @param hours time allowed, more than 0
   */
  public static double amperes(double loadAmperes, double ampereHours, double hours) {
    return loadAmperes + CHARGE_RATIO * ampereHours / hours;
  }

  /**
   * Hours to put back a charge.
   *
   * @param ampereHours charge to put back
   * @param amperes current left for the battery, more than 0
   */
  public static double hours(double ampereHours, double amperes) {
    return CHARGE_RATIO * ampereHours / amperes;
  }
}
