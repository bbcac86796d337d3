package keenward.core.building.contact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ContactTripTest {

  /**
   * Turns a leaf by tiny steps: hinge at the origin, leaf along x, contact at (d, gap), the frame
   * beyond the top of the leaf, so that the magnet moves away square to the gap.
   */
  private static double edgeByTurning(double gap, double release, double fromHinge, double leaf) {
    for (double turned = 0; turned < Math.PI / 2; turned += 1e-6) {
      double along = fromHinge * Math.cos(turned) - fromHinge;
      double out = fromHinge * Math.sin(turned);
      if (Math.sqrt(along * along + out * out + gap * gap) >= release) {
        return Math.hypot(leaf * Math.cos(turned) - leaf, leaf * Math.sin(turned));
      }
    }
    return Double.POSITIVE_INFINITY;
  }

  @ParameterizedTest
  @CsvSource({
    "0.005, 0.025, 0.80, 0.90",
    "0.005, 0.025, 0.06, 0.90",
    "0.015, 0.020, 0.40, 0.75",
    "0.000, 0.060, 0.10, 1.20",
    "0.010, 0.010, 0.50, 0.90"
  })
  void tripsWhereALeafTurnedStepByStepDoes(
      double gap, double release, double fromHinge, double leaf) {
    ContactTrip trip = ContactTrip.ofTurning(gap, release, fromHinge, leaf).orElseThrow();

    assertThat(trip.edgeMetres())
        .isCloseTo(edgeByTurning(gap, release, fromHinge, leaf), within(2e-5));
  }

  @Test
  void neverTripsSoNearToTheHingeThatTheMagnetDoesNotGetAway() {
    assertThat(ContactTrip.ofTurning(0.005, 0.06, 0.03, 0.9)).isEmpty();
    assertThat(edgeByTurning(0.005, 0.06, 0.03, 0.9)).isInfinite();
  }

  @Test
  void movesAsFarAsTheMagnetOnWhatSlides() {
    // 7, 24, 25: a right triangle.
    assertThat(ContactTrip.ofSliding(0.007, 0.025).edgeMetres()).isCloseTo(0.024, within(1e-12));
    assertThat(Optional.of(ContactTrip.ofSliding(0.03, 0.025)))
        .hasValueSatisfying(trip -> assertThat(trip.edgeMetres()).isZero());
  }
}
