package keenward.core.electrical;

import java.util.Optional;
import keenward.core.quantities.Conductor;

/**
 * Resistance of one copper conductor for each kilometre. American wire gauges 18 to 10 are those of
 * NEC Chapter 9, Table 8 (stranded, 75 C); other gauges are solid wire by the diameter rule of ASTM
 * B258. Cross-sections from 0.5 to 2.5 mm2 are the greatest that IEC 60228 allows for flexible
 * conductors (class 5, 20 C); other cross-sections are nominal, and data sheets of thin alarm cable
 * may allow 10 to 25 % more (from memory).
 *
 * @param ohmsPerKilometre at {@code celsius}
 * @param celsius temperature of the conductor
 * @param source where the figure comes from
 */
public record ConductorResistance(double ohmsPerKilometre, double celsius, String source) {
  private static final double RESISTIVITY_AT_20 = 1.0 / 58;
  private static final double ZERO_RESISTANCE = 234.5;
  private static final double FEET_PER_KILOMETRE_IN_THOUSANDS = 1000 / 304.8;
  private static final int THINNEST_IN_TABLE_8 = 18;
  private static final double[] TABLE_8_OHMS_PER_THOUSAND_FEET = {1.24, 1.98, 3.14, 4.99, 7.95};
  private static final double[] IEC_SQUARE_MILLIMETRES = {0.5, 0.75, 1.0, 1.5, 2.5};
  private static final double[] IEC_OHMS_PER_KILOMETRE = {39.0, 26.0, 19.5, 13.3, 7.98};
  private static final double SMALLEST_AREA = 0.05;
  private static final double LARGEST_AREA = 50;
  private static final int THICKEST_GAUGE = 1;
  private static final int THINNEST_GAUGE = 30;

  /** The resistance at the temperature of its table; empty for a size that no alarm cable has. */
  public static Optional<ConductorResistance> of(Conductor conductor) {
    return switch (conductor.gauge()) {
      case AWG -> ofGauge(conductor.size());
      case SQUARE_MILLIMETRES -> ofArea(conductor.size());
    };
  }

  /** The same conductor at another temperature: R1 (234.5 + t) / (234.5 + t1), IEC 60228 annex. */
  public ConductorResistance at(double otherCelsius) {
    return new ConductorResistance(
        ohmsPerKilometre * (ZERO_RESISTANCE + otherCelsius) / (ZERO_RESISTANCE + celsius),
        otherCelsius,
        source + ", taken to " + Figures.text(otherCelsius) + " C");
  }

  /** Diameter of a solid wire in millimetres: 0.127 x 92^((36 - n) / 39), ASTM B258. */
  static double diameterMillimetres(double gauge) {
    return 0.127 * Math.pow(92, (36 - gauge) / 39);
  }

  /** Solid annealed copper wire at 20 C. */
  static ConductorResistance ofSolidWire(double gauge) {
    double diameter = diameterMillimetres(gauge);
    double area = Math.PI / 4 * diameter * diameter;
    return new ConductorResistance(
        1000 * RESISTIVITY_AT_20 / area,
        20,
        "solid copper by the diameter rule of ASTM B258, 20 C");
  }

  private static Optional<ConductorResistance> ofGauge(double gauge) {
    int row = (THINNEST_IN_TABLE_8 - (int) gauge) / 2;
    if (gauge % 2 == 0
        && gauge <= THINNEST_IN_TABLE_8
        && row < TABLE_8_OHMS_PER_THOUSAND_FEET.length) {
      double ohms = TABLE_8_OHMS_PER_THOUSAND_FEET[TABLE_8_OHMS_PER_THOUSAND_FEET.length - 1 - row];
      return Optional.of(
          new ConductorResistance(
              ohms * FEET_PER_KILOMETRE_IN_THOUSANDS,
              75,
              "NEC Chapter 9, Table 8, stranded, 75 C"));
    }
    return gauge < THICKEST_GAUGE || gauge > THINNEST_GAUGE
        ? Optional.empty()
        : Optional.of(ofSolidWire(gauge));
  }

  private static Optional<ConductorResistance> ofArea(double squareMillimetres) {
    for (int row = 0; row < IEC_SQUARE_MILLIMETRES.length; row++) {
      if (IEC_SQUARE_MILLIMETRES[row] == squareMillimetres) {
        return Optional.of(
            new ConductorResistance(
                IEC_OHMS_PER_KILOMETRE[row], 20, "IEC 60228, class 5, greatest at 20 C"));
      }
    }
    if (squareMillimetres < SMALLEST_AREA || squareMillimetres > LARGEST_AREA) {
      return Optional.empty();
    }
    return Optional.of(
        new ConductorResistance(
            1000 * RESISTIVITY_AT_20 / squareMillimetres,
            20,
            "nominal area, annealed copper at 20 C; the cable's data sheet may allow 10 to 25 % more (from memory)"));
  }
}
