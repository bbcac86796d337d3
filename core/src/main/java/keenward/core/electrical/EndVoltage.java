package keenward.core.electrical;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * The voltage of a lead-acid battery at the end of its discharge: 1.75 V a cell at the 20-hour
 * rate, common practice (from memory). The number of cells is told from the supply's charging
 * voltage.
 */
public final class EndVoltage {
  /** What to print beside the figure. */
  public static final String SOURCE =
      "end of discharge 1.75 V a cell, common practice (from memory)";

  /** Volts of a cell at the end of discharge. */
  public static final double VOLTS_A_CELL = 1.75;

  private EndVoltage() {}

  /** Volts at the end of discharge for a supply voltage; empty when it fits no usual battery. */
  public static OptionalDouble of(double supplyVolts) {
    OptionalInt cells = Cells.of(supplyVolts);
    return cells.isPresent()
        ? OptionalDouble.of(cells.getAsInt() * VOLTS_A_CELL)
        : OptionalDouble.empty();
  }
}
