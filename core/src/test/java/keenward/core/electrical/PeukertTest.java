package keenward.core.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import keenward.core.reference.ReferenceRows;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class PeukertTest {
  private record Example(String condition, double ampereHours, double amperes, double exponent) {}

  /** reference/batteries.csv, Peukert examples, computed apart from this program. */
  @Test
  void examplesCheck() {
    List<Example> examples =
        List.of(
            new Example("7 Ah (20 h), 1 A, k=1.10", 7, 1, 1.10),
            new Example("7 Ah (20 h), 0.35 A, k=1.10", 7, 0.35, 1.10),
            new Example("18 Ah (20 h), 3 A, k=1.15", 18, 3, 1.15));
    for (Example example : examples) {
      assertThat(Peukert.hours(example.ampereHours(), example.amperes(), example.exponent()))
          .as(example.condition())
          .isCloseTo(value("Peukert example", example.condition()), within(0.0005));
    }
  }

  @Test
  void aCurrentBelowTheTwentyHourRateEarnsNothing() {
    assertThat(Peukert.hours(7, 0.1, 1.15)).isGreaterThan(70);
    assertThat(Peukert.carefulHours(7, 0.1, 1.15)).isCloseTo(70, within(1e-9));
    assertThat(Peukert.carefulHours(7, 1, 1.15)).isLessThan(7);
  }

  @Test
  void withoutCurrentThereIsNoAnswer() {
    assertThatThrownBy(() -> Peukert.hours(7, 0, 1.1)).hasMessageContaining("current above 0 A");
  }

  static double value(String item, String condition) {
    for (CSVRecord row : ReferenceRows.of("batteries.csv")) {
      if (row.get("item").equals(item) && row.get("condition").equals(condition)) {
        return Double.parseDouble(row.get("value"));
      }
    }
    throw new AssertionError("no row " + item + ", " + condition);
  }
}
