package keenward.core.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ChargerTest {
  /** reference/batteries.csv, charger examples, computed apart from this program. */
  @Test
  void examplesCheck() {
    assertThat(Charger.amperes(0.3, 7, 24))
        .isCloseTo(
            PeukertTest.value("charger example", "7 Ah fully used, 24 h, load 0.3 A"),
            within(0.0005));
    assertThat(Charger.amperes(0.4, 18 * 0.8, 24))
        .isCloseTo(
            PeukertTest.value(
                "charger example", "18 Ah to 80 % in 24 h (EN 50131 grade 3-4), load 0.4 A"),
            within(0.0005));
  }

  @Test
  void timeAndCurrentAreOneRule() {
    double hours = Charger.hours(7, 0.4);
    assertThat(Charger.amperes(0, 7, hours)).isCloseTo(0.4, within(1e-12));
  }
}
