package keenward.core.electrical;

import java.util.OptionalInt;
import keenward.core.plan.Supply;

/**
 * The lead-acid cells of a supply's battery, told from its charging voltage, and what a cell gives:
 * 2.1 V full and at rest, 2 V nominal, 1.75 V at the end of discharge at the 20-hour rate; common
 * practice (from memory).
 */
public final class Cells {
  /** Volts of a full cell a while after charging. */
  public static final double FULL_VOLTS = 2.1;

  /** Nominal volts of a cell, at which data sheets state currents. */
  public static final double NOMINAL_VOLTS = 2.0;

  private static final double LEAST_CHARGING_VOLTS = 2.0;
  private static final double MOST_CHARGING_VOLTS = 2.5;
  private static final int[] USUAL = {3, 6, 12};

  private Cells() {}

  /** Number of cells of a supply's battery; empty while its voltage is not known or unusual. */
  public static OptionalInt of(Supply supply) {
    return supply.voltage().find().map(each -> of(each.volts())).orElse(OptionalInt.empty());
  }

  /** Number of cells for a supply voltage; empty when it fits no usual battery. */
  public static OptionalInt of(double supplyVolts) {
    for (int cells : USUAL) {
      if (supplyVolts >= cells * LEAST_CHARGING_VOLTS
          && supplyVolts <= cells * MOST_CHARGING_VOLTS) {
        return OptionalInt.of(cells);
      }
    }
    return OptionalInt.empty();
  }
}
