package keenward.core.reporting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import keenward.core.reference.ReferenceRows;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

class CheckDigitTest {
  /** reference/dc05_digit_values.csv: DC-05 through public source of a telephone exchange. */
  @Test
  void digitsHaveThePublishedValues() {
    for (CSVRecord row : ReferenceRows.of("dc05_digit_values.csv")) {
      assertThat(CheckDigit.valueOf(row.get("digit").charAt(0)))
          .as(row.get("digit"))
          .isEqualTo(Integer.parseInt(row.get("value")));
    }
    assertThat(CheckDigit.valueOf('A')).isEqualTo(-1);
    assertThat(CheckDigit.valueOf('?')).isEqualTo(-1);
  }

  /** reference/dc05_checksum_examples.csv; the first row is a published example (from memory). */
  @Test
  void completesTheExamples() {
    for (CSVRecord row : ReferenceRows.of("dc05_checksum_examples.csv")) {
      String digits = row.get("digits");
      assertThat(CheckDigit.of(digits.substring(0, 15)))
          .as(row.get("message"))
          .isEqualTo(digits.charAt(15));
      assertThat(CheckDigit.isRight(digits)).as(row.get("message")).isTrue();
    }
  }

  @Test
  void everySingleWrongDigitIsNoticed() {
    String digits = "1234181131010158";
    for (int index = 0; index < digits.length(); index++) {
      for (char other : "1234567890BCDEF".toCharArray()) {
        String changed = digits.substring(0, index) + other + digits.substring(index + 1);
        assertThat(CheckDigit.isRight(changed)).as(changed).isEqualTo(changed.equals(digits));
      }
    }
  }

  @Test
  void refusesWhatIsNotADigit() {
    assertThatThrownBy(() -> CheckDigit.of("12A4")).hasMessage("not a DC-05 digit: A");
  }
}
