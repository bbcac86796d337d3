package keenward.core.radio;

import java.util.Optional;
import keenward.core.plan.PremisesKind;

/**
 * Loss indoors without a drawing, by Rec. ITU-R P.1238: the second opinion. The power-loss
 * coefficients are those of the -7 and -8 editions, from memory and compared with open-source code.
 * Below 900 MHz the row of 900 MHz is used, which is beyond the table.
 */
public enum SiteGeneral {
  RESIDENTIAL("residential", 8),
  OFFICE("office", 10),
  COMMERCIAL("commercial", 10);

  /** The Recommendation holds from here on. */
  static final double LEAST_MEGAHERTZ = 300;

  private final String word;
  private final double sigmaDecibels;

  SiteGeneral(String word, double sigmaDecibels) {
    this.word = word;
    this.sigmaDecibels = sigmaDecibels;
  }

  /** The row that fits premises; an office where they are not known. */
  public static SiteGeneral of(Optional<PremisesKind> premises) {
    return premises
        .map(kind ->
            switch (kind) {
              case DWELLING, SHOP_WITH_DWELLING -> RESIDENTIAL;
              case SHOP, WAREHOUSE, CLUB -> COMMERCIAL;
              case OFFICE, WORKSHOP, CLINIC, FARM, SCHOOL, OTHER -> OFFICE;
            })
        .orElse(OFFICE);
  }

  /** Its name in the table. */
  public String word() {
    return word;
  }

  /** Standard deviation from place to place. */
  public double sigmaDecibels() {
    return sigmaDecibels;
  }

  /**
   * Loss in decibels: 20 log f + N log d + Lf - 28.
   *
   * @param coefficient power-loss coefficient N
   * @param floorDecibels loss of the floors between
   */
  static double lossDecibels(
      double megahertz, double metres, double coefficient, double floorDecibels) {
    return 20 * Math.log10(megahertz) + coefficient * Math.log10(metres) + floorDecibels - 28;
  }

  /** Power-loss coefficient N of the nearest row of the table. */
  double coefficient(double megahertz) {
    return switch (this) {
      // For homes the table begins at 1.8 GHz; at 900 MHz the office row stands in.
      case RESIDENTIAL -> megahertz < 1350 ? 33 : 28;
      case OFFICE ->
          megahertz < 1050
              ? 33
              : megahertz < 1550 ? 32 : megahertz < 3000 ? 30 : megahertz < 4500 ? 27.5 : 31;
      case COMMERCIAL -> megahertz < 1050 ? 20 : 22;
    };
  }

  /** Loss of so many floors; of the nearest row of the table where there is none for the band. */
  double floorDecibels(double megahertz, int floors) {
    if (floors == 0) {
      return 0;
    }
    return switch (this) {
      case RESIDENTIAL -> megahertz < 2200 ? 4 * floors : megahertz < 3800 ? 5 : 7;
      case OFFICE ->
          megahertz < 1350
              ? 9 + 10 * (Math.min(floors, 2) - 1) + 5 * Math.max(0, floors - 2)
              : megahertz < 2200 ? 15 + 4 * (floors - 1) : megahertz < 3800 ? 14 : 16;
      case COMMERCIAL -> 6 + 3 * (floors - 1);
    };
  }

  /**
   * Table 2 of P.1238-11, for places on one floor: 10 alpha log d + beta + 10 gamma log f, d in
   * metres and f in GHz. It has no row for homes.
   */
  enum Newer {
    OFFICE_IN_SIGHT(1.46, 34.62, 2.03),
    OFFICE_OUT_OF_SIGHT(2.46, 29.53, 2.38),
    CORRIDOR_IN_SIGHT(1.63, 28.12, 2.25),
    CORRIDOR_OUT_OF_SIGHT(2.77, 29.27, 2.48),
    INDUSTRIAL_IN_SIGHT(2.31, 24.52, 2.06),
    INDUSTRIAL_OUT_OF_SIGHT(3.79, 21.01, 1.34);

    private final double alpha;
    private final double beta;
    private final double gamma;

    Newer(double alpha, double beta, double gamma) {
      this.alpha = alpha;
      this.beta = beta;
      this.gamma = gamma;
    }

    double lossDecibels(double megahertz, double metres) {
      return 10 * alpha * Math.log10(metres) + beta + 10 * gamma * Math.log10(megahertz / 1000);
    }
  }
}
