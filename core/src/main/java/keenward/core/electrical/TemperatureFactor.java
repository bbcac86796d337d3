package keenward.core.electrical;

import java.util.OptionalDouble;

/**
 * Factor by which a lead-acid battery has to be larger to give its capacity in the cold: IEEE Std
 * 485, Table 1, base 25 C, linear between its rows, refused outside them (-3.9 C to 51.7 C). The
 * values are quoted from memory; a page that quotes the table confirms range, base and
 * interpolation. The table was made for large vented and valve-regulated batteries: for a small
 * sealed one it is an approximation.
 */
public final class TemperatureFactor {
  /** What to print beside the factor. */
  public static final String SOURCE =
      "IEEE Std 485, Table 1 (values from memory); an approximation for small sealed batteries";

  /** Lowest temperature of the table. */
  public static final double LOWEST_CELSIUS = -3.9;

  /** Highest temperature of the table. */
  public static final double HIGHEST_CELSIUS = 51.7;

  private static final double[] CELSIUS = {
    -3.9, -1.1, 1.7, 4.4, 7.2, 10.0, 12.8, 15.6, 18.3, 18.9, 19.4, 20.0, 20.6, 21.1, 21.7, 22.2,
    22.8, 23.4, 23.9, 24.5, 25.0, 25.6, 26.1, 26.7, 27.2, 27.8, 28.3, 28.9, 29.4, 32.2, 35.0, 37.8,
    40.6, 43.3, 46.1, 48.9, 51.7
  };
  private static final double[] FACTOR = {
    1.52, 1.43, 1.35, 1.30, 1.25, 1.19, 1.15, 1.11, 1.08, 1.072, 1.064, 1.056, 1.048, 1.04, 1.034,
        1.029, 1.023, 1.017,
    1.011, 1.006, 1.0, 0.994, 0.987, 0.98, 0.976, 0.972, 0.968, 0.964, 0.96, 0.94, 0.93, 0.91, 0.89,
        0.88, 0.87, 0.86,
    0.85
  };

  private TemperatureFactor() {}

  /** The factor at a temperature in degrees Celsius; empty outside the table. */
  public static OptionalDouble at(double celsius) {
    if (!(celsius >= LOWEST_CELSIUS && celsius <= HIGHEST_CELSIUS)) {
      return OptionalDouble.empty();
    }
    int row = 1;
    while (CELSIUS[row] < celsius) {
      row++;
    }
    double share = (celsius - CELSIUS[row - 1]) / (CELSIUS[row] - CELSIUS[row - 1]);
    return OptionalDouble.of(FACTOR[row - 1] + share * (FACTOR[row] - FACTOR[row - 1]));
  }
}
