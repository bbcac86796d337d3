package keenward.core.quantities;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {

  // The international foot and yard of 1959 are exactly 0.3048 m and 0.9144 m (NIST SP 811, B.6;
  // from memory).
  @ParameterizedTest
  @CsvSource({"120 ft,36.576", "36 m,36", "1 in,0.0254", "10yd,9.144", "250 mm,0.25", "0 m,0"})
  void readsLengthsInMetresAndKeepsTheWriting(String text, double metres) {
    Length length = Length.parse(text).find().orElseThrow();
    assertThat(length.metres()).isEqualTo(metres, within(1e-12));
    assertThat(length.written()).isEqualTo(text);
  }

  @Test
  void readsEachKindOfQuantity() {
    assertThat(Current.parse("0.5 A").find().orElseThrow().milliamps()).isEqualTo(500);
    assertThat(Capacity.parse("7 Ah").find().orElseThrow().ampereHours()).isEqualTo(7);
    assertThat(Voltage.parse("13.6 V").find().orElseThrow().volts()).isEqualTo(13.6);
    assertThat(Resistance.parse("4.7 kohm").find().orElseThrow().ohms()).isEqualTo(4700);
    assertThat(Temperature.parse("-5 C").find().orElseThrow().celsius()).isEqualTo(-5);
    assertThat(Angle.parse("225 deg").find().orElseThrow().degrees()).isEqualTo(225);
    assertThat(Level.parse("-105 dBm").find().orElseThrow().decibelMilliwatts()).isEqualTo(-105);
    assertThat(Frequency.parse("868.3 MHz").find().orElseThrow().megahertz()).isEqualTo(868.3);
    assertThat(Period.parse("5 y").find().orElseThrow().months()).isEqualTo(60);
    assertThat(Span.parse("1.5 min").find().orElseThrow().milliseconds()).isEqualTo(90_000);
  }

  @Test
  void tellsGaugeFromCrossSection() {
    assertThat(Conductor.parse("22 AWG").find().orElseThrow())
        .isEqualTo(new Conductor(Conductor.Gauge.AWG, 22, "22 AWG"));
    assertThat(Conductor.parse("0.22 mm2").find().orElseThrow())
        .isEqualTo(new Conductor(Conductor.Gauge.SQUARE_MILLIMETRES, 0.22, "0.22 mm2"));
    assertThat(Conductor.parse("22.5 AWG").find()).isEmpty();
  }

  @Test
  void refusesWhatItWouldHaveToRound() {
    assertThat(Span.parse("0.0001 s").expected()).contains("millisecond");
    assertThat(Period.parse("1.5 months").expected()).contains("whole months");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "m",
        "36",
        "36 parsecs",
        "1e3 m",
        "1,5 m",
        "--1 m",
        "-",
        ".5 m",
        "1. m",
        "1.2.3 m",
        "-3 m",
        "NaN m",
        "٣ m",
        "99999999999999999999999999999999999999999 m",
        "100001 m"
      })
  void saysWhatWasExpectedOfAWrongLength(String text) {
    assertThat(Length.parse(text).find()).isEmpty();
    assertThat(Length.parse(text).expected()).startsWith("a length such as 36 m or 120 ft");
  }

  @Test
  void neverThrowsOnAnyText() {
    long seed = 20261125;
    Random random = new Random(seed);
    String alphabet = "0123456789.-+eE mftAhVCdegohskΩµ²\t\u0000\uD83D";
    for (int round = 0; round < 20_000; round++) {
      StringBuilder text = new StringBuilder();
      for (int length = random.nextInt(12); length > 0; length--) {
        text.append(alphabet.charAt(random.nextInt(alphabet.length())));
      }
      String sample = text.toString();
      Stream.<Function<String, Parsed<?>>>of(
              Length::parse,
              Current::parse,
              Span::parse,
              Period::parse,
              Conductor::parse,
              Voltage::parse)
          .forEach(parse ->
              assertThat(parse.apply(sample)).as("seed %d, text '%s'", seed, sample).isNotNull());
    }
  }
}
