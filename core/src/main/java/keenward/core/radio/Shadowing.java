package keenward.core.radio;

import keenward.core.electrical.Explained;
import keenward.core.electrical.Figures;

/**
 * How the level differs from place to place at one distance: normally distributed in decibels
 * (P.1238, shadow fading).
 *
 * @param sigmaDecibels its standard deviation
 */
public record Shadowing(double sigmaDecibels) {

  /** 99 % of a normal distribution lies below so many standard deviations (NIST handbook). */
  static final double DEVIATIONS_FOR_99_PERCENT = 2.326_347_874;

  /** What a link keeps in hand so that it holds in 99 of 100 places. */
  public double reserveDecibels() {
    return DEVIATIONS_FOR_99_PERCENT * sigmaDecibels;
  }

  /** The reserve as a line of a sum. */
  public Explained reserve() {
    return Explained.known(
        "Reserve for 99 % of places",
        "2.326 x " + Figures.text(sigmaDecibels) + " dB",
        reserveDecibels(),
        "dB",
        "ITU-R P.1238, log-normal shadowing; table from memory");
  }

  /** Share of the places in which a link with this margin hears nothing. */
  public double shareOfPlacesWithout(double marginDecibels) {
    return above(marginDecibels / sigmaDecibels);
  }

  /**
   * Share of a normal distribution above x. Chebyshev fit of the complementary error function with
   * a relative error under 1.2e-7 everywhere (Numerical Recipes, erfcc; from memory, compared with
   * tables in the test).
   */
  static double above(double x) {
    double z = Math.abs(x) / Math.sqrt(2);
    double t = 1 / (1 + z / 2);
    double[] fit = {
      -1.26551223, 1.00002368, 0.37409196, 0.09678418, -0.18628806,
      0.27886807, -1.13520398, 1.48851587, -0.82215223, 0.17087277
    };
    double power = 0;
    for (int i = fit.length - 1; i >= 0; i--) {
      power = power * t + fit[i];
    }
    double tail = t * Math.exp(power - z * z) / 2;
    return x >= 0 ? tail : 1 - tail;
  }
}
