package keenward.core.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import keenward.core.quantities.Period;
import org.junit.jupiter.api.Test;

class AgeTest {

  @Test
  void endsAPeriodOnTheLastDayOfAShorterMonth() {
    assertThat(Age.end(LocalDate.of(2020, 2, 29), new Period(12, "12 months")))
        .isEqualTo(LocalDate.of(2021, 2, 28));
  }

  @Test
  void countsWholeMonthsOnly() {
    LocalDate from = LocalDate.of(2022, 10, 5);
    assertThat(Age.months(from, LocalDate.of(2026, 10, 4))).isEqualTo(47);
    assertThat(Age.months(from, LocalDate.of(2026, 10, 5))).isEqualTo(48);
  }
}
