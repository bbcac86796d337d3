package keenward.core.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import keenward.core.reference.ReferenceRows;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class TemperatureFactorTest {
  /**
   * reference/batteries.csv: IEEE Std 485, Table 1, values from memory, range and base from a page.
   */
  @Test
  void everyRowOfTheTableIsHeld() {
    int rows = 0;
    for (CSVRecord row : ReferenceRows.of("batteries.csv")) {
      if (row.get("item").equals("temperature correction")) {
        double celsius = Double.parseDouble(row.get("condition").replace(" C", ""));
        assertThat(TemperatureFactor.at(celsius))
            .as(row.get("condition"))
            .hasValue(Double.parseDouble(row.get("value")));
        rows++;
      }
    }
    assertThat(rows).isEqualTo(37);
  }

  /** Computed by hand: 1.430 at -1.1 C and 1.350 at 1.7 C give 1.3986 at 0 C. */
  @Test
  void betweenRowsItIsLinear() {
    assertThat(TemperatureFactor.at(0).getAsDouble()).isCloseTo(1.3986, within(0.0001));
  }

  @Test
  void outsideTheTableItIsRefused() {
    assertThat(TemperatureFactor.at(-3.91)).isEmpty();
    assertThat(TemperatureFactor.at(51.71)).isEmpty();
    assertThat(TemperatureFactor.at(Double.NaN)).isEmpty();
  }

  @Test
  void colderNeverMeansSmaller() {
    double last = Double.POSITIVE_INFINITY;
    for (double celsius = -3.9; celsius <= 51.7; celsius += 0.05) {
      double factor = TemperatureFactor.at(celsius).getAsDouble();
      assertThat(factor).as("%s C", celsius).isLessThanOrEqualTo(last);
      last = factor;
    }
  }
}
