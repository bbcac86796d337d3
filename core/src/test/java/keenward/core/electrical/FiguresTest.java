package keenward.core.electrical;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.junit.jupiter.api.Test;

class FiguresTest {
  @Test
  void numbersHaveAPointWhateverTheLocale() {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertThat(Figures.text(1234.5)).isEqualTo("1234.5");
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void trailingZerosAndNoiseAreLeftOut() {
    assertThat(Figures.text(7.0)).isEqualTo("7");
    assertThat(Figures.text(0.1 + 0.2)).isEqualTo("0.3");
    assertThat(Figures.text(0.152 * 12 + 0.258 * 0.25)).isEqualTo("1.889");
    assertThat(Figures.text(-0.0001)).isEqualTo("0");
    assertThat(Figures.text(1200)).isEqualTo("1200");
  }

  @Test
  void hoursAndSharesHaveOneDecimal() {
    assertThat(Figures.text(46.0526, "h")).isEqualTo("46.1");
    assertThat(Figures.text(8.666, "%")).isEqualTo("8.7");
    assertThat(Figures.text(0.0571, "V")).isEqualTo("0.057");
  }
}
