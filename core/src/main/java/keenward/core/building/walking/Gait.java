package keenward.core.building.walking;

import keenward.core.plan.Pace;

/**
 * How fast somebody walks.
 *
 * @param levelMetresPerSecond on a floor
 * @param stairMetresPerSecond on a stair, up or down, measured level
 */
public record Gait(double levelMetresPerSecond, double stairMetresPerSecond) {

  /** How many of 100 walkers of a pace are at least so fast. */
  public enum Share {
    /** The middle one. */
    HALF(50),
    /** 85 of 100: the 15th percentile of speed, which studies publish. */
    MOST(85),
    /** 95 of 100: the 5th percentile of speed. */
    NEARLY_ALL(95);

    private final int ofHundred;

    Share(int ofHundred) {
      this.ofHundred = ofHundred;
    }

    /** The number. */
    public int ofHundred() {
      return ofHundred;
    }
  }

  /** Standard deviations between the middle and the 15th percentile of a normal distribution. */
  private static final double TO_FIFTEENTH = 1.0364;

  /** The same to the 5th percentile. */
  private static final double TO_FIFTH = 1.6449;

  /**
   * The walker of a pace that so many of 100 keep up with.
   *
   * <p>Level, 15th percentiles read: 0.92 m/s over 60 and 1.15 m/s up to 60 (TCRP-NCHRP 2005,
   * abstract of "Another look at pedestrian walking speed"), 1.25 m/s under 65 (Transportation
   * Research Record 1538, summary of the field study). Middles from memory, of the same studies:
   * 1.295 (4.25 ft/s), 1.445 (4.74 ft/s) and 1.51 m/s. The 5th percentile follows from the two,
   * speeds being taken as normally distributed (an assumption).
   *
   * <p>Stairs: 0.4 to 0.5 m/s were the most common level speeds up a long flight (Expo 2000
   * stairway study, abstract). Short flights and the way down are faster, so that this errs to the
   * long side; no spread was found.
   */
  public static Gait of(Pace pace, Share share) {
    return switch (pace) {
      case SLOW -> new Gait(level(1.295, 0.92, share), 0.4);
      case USUAL -> new Gait(level(1.445, 1.15, share), 0.5);
      case BRISK -> new Gait(level(1.51, 1.25, share), 0.5);
    };
  }

  private static double level(double middle, double fifteenth, Share share) {
    return switch (share) {
      case HALF -> middle;
      case MOST -> fifteenth;
      case NEARLY_ALL -> middle - (middle - fifteenth) * TO_FIFTH / TO_FIFTEENTH;
    };
  }

  double metresPerSecond(boolean onStair) {
    return onStair ? stairMetresPerSecond : levelMetresPerSecond;
  }
}
