package keenward.core.electrical;

import java.util.OptionalDouble;

/**
 * The sizes in which small sealed 12 V batteries are usually sold; common practice, from memory.
 */
public final class BatterySizes {
  private static final double[] AMPERE_HOURS = {
    1.2, 2.3, 3.4, 4, 5, 7, 8, 9, 12, 18, 26, 33, 40, 55, 65, 100
  };

  private BatterySizes() {}

  /** The smallest usual size that is not below a need; empty above the largest. */
  public static OptionalDouble nextUp(double neededAmpereHours) {
    for (double size : AMPERE_HOURS) {
      if (size >= neededAmpereHours) {
        return OptionalDouble.of(size);
      }
    }
    return OptionalDouble.empty();
  }
}
