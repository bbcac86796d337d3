package keenward.core.radio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The loss of slabs against the transfer matrix of thin-film optics, written apart. */
class SlabTest {

  /**
   * Transmission of a slab in air by its characteristic matrix [[cos p, j sin p / n], [j n sin p,
   * cos p]]: t = 2 / (m11 + m12 + m21 + m22) (textbook of thin-film optics).
   */
  private static double matrixLossDecibels(
      double permittivity, double conductivity, double hertz, double metres) {
    double omega = 2 * Math.PI * hertz;
    double[] square = {permittivity, -conductivity / (omega * 8.854_187_8128e-12)};
    double size = Math.hypot(square[0], square[1]);
    // The root of a complex number by its half-angle formulas.
    double[] n = {Math.sqrt((size + square[0]) / 2), -Math.sqrt((size - square[0]) / 2)};
    double k = omega * metres / 299_792_458.0;
    double a = k * n[0];
    double b = k * n[1];
    double[] cos = {Math.cos(a) * Math.cosh(b), -Math.sin(a) * Math.sinh(b)};
    double[] sin = {Math.sin(a) * Math.cosh(b), Math.cos(a) * Math.sinh(b)};
    double[] inverse = {n[0] / size, -n[1] / size};
    double[] sum = {n[0] + inverse[0], n[1] + inverse[1]};
    // j sin p (n + 1/n) + 2 cos p
    double real = 2 * cos[0] - (sin[0] * sum[1] + sin[1] * sum[0]);
    double imaginary = 2 * cos[1] + sin[0] * sum[0] - sin[1] * sum[1];
    return -20 * Math.log10(2 / Math.hypot(real, imaginary));
  }

  @ParameterizedTest
  @EnumSource(Dielectric.class)
  void losesWhatTheTransferMatrixSays(Dielectric material) {
    for (double megahertz : new double[] {315, 433.92, 868.3, 915, 2440, 5200}) {
      for (double metres : new double[] {0.004, 0.025, 0.11, 0.3}) {
        double expected =
            matrixLossDecibels(
                material.permittivity(),
                material.conductivity(megahertz / 1000),
                megahertz * 1e6,
                metres);
        // The Recommendation rounds 17.975 to 17.98.
        assertThat(material.slabLossDecibels(megahertz / 1000, metres))
            .isCloseTo(expected, within(0.001 + 0.0005 * expected));
      }
    }
  }

  @Test
  void aThickSlabLosesItsInsideAndItsTwoSurfaces() {
    double n = Math.sqrt(Dielectric.CONCRETE.permittivity());
    double surfaces = -20 * Math.log10(4 * n / Math.pow(1 + n, 2));
    assertThat(Dielectric.CONCRETE.slabLossDecibels(2.4, 2))
        .isCloseTo(2 * Dielectric.CONCRETE.lossDecibelsAMetre(2.4) + surfaces, within(0.1));
    assertThat(Dielectric.CONCRETE.slabLossDecibels(2.4, 0)).isCloseTo(0, within(1e-9));
  }
}
