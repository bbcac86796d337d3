package keenward.core.radio;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every figure of radio.csv that the sums use; the file names the source of each row. */
class RadioTableTest {

  private static Stream<CSVRecord> rows(String topic) throws IOException {
    try (Reader reader =
        new InputStreamReader(
            Objects.requireNonNull(RadioTableTest.class.getResourceAsStream("radio.csv")),
            StandardCharsets.UTF_8)) {
      return CSVFormat.DEFAULT
          .builder()
          .setHeader()
          .setSkipHeaderRecord(true)
          .get()
          .parse(reader)
          .getRecords()
          .stream()
          .filter(row -> row.get("topic").equals(topic));
    }
  }

  static Stream<CSVRecord> freeSpace() throws IOException {
    return rows("P.525 check");
  }

  static Stream<CSVRecord> fieldStrength() throws IOException {
    return rows("FCC link example");
  }

  static Stream<CSVRecord> indoor() throws IOException {
    return rows("P.1238 check");
  }

  static Stream<CSVRecord> coefficients() throws IOException {
    return rows("P.1238-11 Table 2");
  }

  static Stream<CSVRecord> materials() throws IOException {
    return rows("P.2040 Table 3")
        .filter(row -> !row.get("item").equals("metal") && !row.get("item").equals("floorboard"));
  }

  static Stream<CSVRecord> materialChecks() throws IOException {
    return rows("P.2040 check");
  }

  private static double[] numbers(String text) {
    return Pattern.compile("[0-9]+(\\.[0-9]+)?")
        .matcher(text)
        .results()
        .mapToDouble(result -> Double.parseDouble(result.group()))
        .toArray();
  }

  private static Dielectric material(String item) {
    return Dielectric.valueOf(item.split(" at ", -1)[0].replace(' ', '_').toUpperCase(Locale.ROOT));
  }

  @ParameterizedTest
  @MethodSource("freeSpace")
  void losesByDistance(CSVRecord row) {
    double[] given = numbers(row.get("item"));
    assertThat(FreeSpace.lossDecibels(given[0], given[1]))
        .isCloseTo(Double.parseDouble(row.get("value")), within(0.005));
  }

  @ParameterizedTest
  @MethodSource("fieldStrength")
  void turnsFieldStrengthIntoPower(CSVRecord row) {
    double[] given = numbers(row.get("item").replace("15.231(b)", ""));
    assertThat(FreeSpace.powerDecibelMilliwatts(given[1] / 1e6, 3))
        .isCloseTo(Double.parseDouble(row.get("value")), within(0.01));
  }

  @ParameterizedTest
  @MethodSource("indoor")
  void losesIndoors(CSVRecord row) {
    double[] given = numbers(row.get("item"));
    assertThat(SiteGeneral.lossDecibels(given[0], given[1], given[2], given[3]))
        .isCloseTo(Double.parseDouble(row.get("value")), within(0.005));
  }

  @Test
  void losesIndoorsByTheNewerEdition() throws IOException {
    CSVRecord row = rows("P.1238-11 check").findFirst().orElseThrow();
    assertThat(row.get("item")).isEqualTo("office NLoS 2.4 GHz 10 m");
    assertThat(SiteGeneral.Newer.OFFICE_OUT_OF_SIGHT.lossDecibels(2400, 10))
        .isCloseTo(Double.parseDouble(row.get("value")), within(0.005));
  }

  @ParameterizedTest
  @MethodSource("coefficients")
  void holdsTheCoefficientsOfTheNewerEdition(CSVRecord row) {
    String name =
        row.get("item")
            .toUpperCase(Locale.ROOT)
            .replace(" NLOS", "_OUT_OF_SIGHT")
            .replace(" LOS", "_IN_SIGHT");
    double[] given = numbers(row.get("value"));
    SiteGeneral.Newer newer = SiteGeneral.Newer.valueOf(name);
    // At 1 GHz and 1 m the other two terms are nothing.
    assertThat(newer.lossDecibels(1000, 1)).isCloseTo(given[1], within(1e-9));
    assertThat(newer.lossDecibels(1000, 10) - given[1]).isCloseTo(10 * given[0], within(1e-9));
    assertThat(newer.lossDecibels(10_000, 1) - given[1]).isCloseTo(10 * given[2], within(1e-9));
  }

  @ParameterizedTest
  @MethodSource("materials")
  void holdsTheMaterialsOfTheTable(CSVRecord row) {
    Dielectric material = material(row.get("item"));
    double[] given = numbers(row.get("value"));
    assertThat(material.word()).isEqualTo(row.get("item"));
    assertThat(material.permittivity()).isEqualTo(given[0]);
    assertThat(material.conductivity(1)).isEqualTo(given[2]);
    assertThat(material.conductivity(10))
        .isCloseTo(given[2] * Math.pow(10, given[3]), within(1e-12));
    Matcher range =
        Pattern.compile("valid ([0-9.]+)-([0-9.]+) GHz").matcher(row.get("unit_or_note"));
    assertThat(range.find()).isTrue();
    double least = Double.parseDouble(range.group(1));
    double most = Double.parseDouble(range.group(2));
    assertThat(material.holdsAt(least)).isTrue();
    assertThat(material.holdsAt(most)).isTrue();
    assertThat(material.holdsAt(0.99 * least)).isFalse();
    assertThat(material.holdsAt(1.01 * most)).isFalse();
  }

  @ParameterizedTest
  @MethodSource("materialChecks")
  void losesInsideMaterials(CSVRecord row) {
    double[] given = numbers(row.get("value"));
    double gigahertz = numbers(row.get("item"))[0];
    Dielectric material = material(row.get("item"));
    assertThat(material.permittivity()).isEqualTo(given[0]);
    assertThat(material.conductivity(gigahertz)).isCloseTo(given[1], within(0.000_005));
    double about = numbers(row.get("unit_or_note"))[0];
    // The row's figure is the approximation for small losses, printed to 0.1 dB.
    assertThat(material.lossDecibelsAMetre(gigahertz))
        .isCloseTo(about, within(0.05 + 0.006 * about));
  }

  /** Standard normal table (NIST/SEMATECH e-Handbook, 1.3.6.7.1). */
  @Test
  void knowsTheNormalDistribution() {
    assertThat(Shadowing.above(0)).isCloseTo(0.5, within(1e-6));
    assertThat(Shadowing.above(1)).isCloseTo(0.158_655_25, within(1e-7));
    assertThat(Shadowing.above(-1)).isCloseTo(0.841_344_75, within(1e-7));
    assertThat(Shadowing.above(4)).isCloseTo(3.167_124e-5, within(1e-11));
    assertThat(Shadowing.above(Shadowing.DEVIATIONS_FOR_99_PERCENT)).isCloseTo(0.01, within(1e-8));
    assertThat(new Shadowing(8).reserveDecibels()).isCloseTo(18.61, within(0.005));
    assertThat(new Shadowing(10).reserveDecibels()).isCloseTo(23.26, within(0.005));
    assertThat(new Shadowing(8).shareOfPlacesWithout(8)).isCloseTo(0.158_655, within(1e-6));
  }
}
