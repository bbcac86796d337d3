package keenward.core.electrical.outage;

import keenward.core.electrical.Cells;
import keenward.core.electrical.EndVoltage;
import keenward.core.electrical.Peukert;

/**
 * The voltage of a lead-acid cell by what is left in it. At rest a battery of 12 V shows 12.6,
 * 12.4, 12.2 and 12 V with all, three, two and one quarter left (common practice, from memory; a
 * sealed one shows up to 0.2 V more). Under load the resistance takes its share. The last tenth
 * falls to the end of discharge, so that at the 20-hour rate a cell reaches 1.75 V just when its
 * marked capacity is used up.
 */
public final class DischargeCurve {
  /** What to print beside a voltage. */
  public static final String SOURCE =
      "12.6, 12.4, 12.2, 12 V with 100, 75, 50, 25 % left, a knee to 1.75 V a cell at the 20-hour rate, and 0.06 ohm"
          + " Ah a cell (common practice, from memory)";

  /**
   * Resistance of a cell times its capacity, in ohm x Ah: twice the 20 to 25 mohm of a data sheet
   * for 12 V, 7 Ah, since those are measured at 1 kHz; common practice, from memory.
   */
  static final double OHM_AMPERE_HOURS = 0.06;

  private static final double[] SHARE = {0, 0.1, 0.25, 0.5, 0.75, 1};
  private static final double[] VOLTS = {
    EndVoltage.VOLTS_A_CELL + OHM_AMPERE_HOURS / Peukert.RATED_HOURS,
    1.96,
    2.0,
    12.2 / 6,
    12.4 / 6,
    Cells.FULL_VOLTS
  };

  private DischargeCurve() {}

  /**
   * Volts of a battery under load.
   *
   * @param share what is left of its capacity, 0 to 1
   * @param cells number of cells in series
   * @param amperes load
   * @param ampereHours capacity, more than 0
   */
  public static double volts(double share, int cells, double amperes, double ampereHours) {
    int row = 1;
    while (row < SHARE.length - 1 && SHARE[row] < share) {
      row++;
    }
    double within = (share - SHARE[row - 1]) / (SHARE[row] - SHARE[row - 1]);
    double atRest = VOLTS[row - 1] + within * (VOLTS[row] - VOLTS[row - 1]);
    return cells * (atRest - OHM_AMPERE_HOURS * amperes / ampereHours);
  }

  /** The nearest share below at which the curve bends; 0 below the last. */
  static double bendBelow(double share) {
    int row = SHARE.length - 1;
    while (row > 0 && SHARE[row] >= share) {
      row--;
    }
    return SHARE[row];
  }
}
