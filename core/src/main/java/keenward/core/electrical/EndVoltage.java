package keenward.core.electrical;

import java.util.OptionalDouble;

/**
 * The voltage of a lead-acid battery at the end of its discharge: 1.75 V a cell at the 20-hour
 * rate, common practice (from memory). The number of cells is told from the supply's charging
 * voltage.
 */
public final class EndVoltage {
  /** What to print beside the figure. */
  public static final String SOURCE =
      "end of discharge 1.75 V a cell, common practice (from memory)";

  private static final double VOLTS_A_CELL = 1.75;
  private static final double LEAST_CHARGING_VOLTS_A_CELL = 2.0;
  private static final double MOST_CHARGING_VOLTS_A_CELL = 2.5;
  private static final int[] CELLS = {3, 6, 12};

  private EndVoltage() {}

  /** Volts at the end of discharge for a supply voltage; empty when it fits no usual battery. */
  public static OptionalDouble of(double supplyVolts) {
    for (int cells : CELLS) {
      if (supplyVolts >= cells * LEAST_CHARGING_VOLTS_A_CELL
          && supplyVolts <= cells * MOST_CHARGING_VOLTS_A_CELL) {
        return OptionalDouble.of(cells * VOLTS_A_CELL);
      }
    }
    return OptionalDouble.empty();
  }
}
