package keenward.core.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import keenward.core.quantities.Conductor;
import keenward.core.reference.ReferenceRows;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** reference/conductors.csv: NEC Chapter 9 Table 8, ASTM B258 rule, IEC 60228. */
class ConductorResistanceTest {
  @Test
  void strandedGaugesAreThoseOfTableEight() {
    int rows = 0;
    for (CSVRecord row : ReferenceRows.of("conductors.csv")) {
      if (row.get("table").startsWith("NEC") && row.get("construction").startsWith("stranded")) {
        ConductorResistance found = of(row.get("size"));
        assertThat(found.ohmsPerKilometre() * 0.3048)
            .as(row.get("size"))
            .isCloseTo(Double.parseDouble(row.get("value")), within(1e-9));
        assertThat(found.celsius()).isEqualTo(75);
        rows++;
      }
    }
    assertThat(rows).isEqualTo(5);
  }

  @Test
  void solidWireIsThatOfTheDiameterRuleAtBothTemperatures() {
    int rows = 0;
    for (CSVRecord row : ReferenceRows.of("conductors.csv")) {
      if (row.get("table").equals("AWG formula")) {
        double gauge = Double.parseDouble(row.get("size").replace(" AWG", ""));
        double celsius = Double.parseDouble(row.get("temp_C"));
        assertThat(ConductorResistance.ofSolidWire(gauge).at(celsius).ohmsPerKilometre())
            .as(row.get("size") + " at " + celsius)
            .isCloseTo(
                Double.parseDouble(row.get("ohm_per_km")),
                within(Double.parseDouble(row.get("ohm_per_km")) * 0.0002));
        rows++;
      }
    }
    assertThat(rows).isEqualTo(16);
  }

  /**
   * NEC's solid column, printed to three digits, is the diameter rule taken to 75 C within 0.5 %.
   */
  @Test
  void theDiameterRuleReachesTheSolidColumnOfTableEight() {
    for (CSVRecord row : ReferenceRows.of("conductors.csv")) {
      if (row.get("table").startsWith("NEC") && row.get("construction").equals("solid")) {
        double gauge = Double.parseDouble(row.get("size").replace(" AWG", ""));
        assertThat(ConductorResistance.ofSolidWire(gauge).at(75).ohmsPerKilometre() * 0.3048)
            .as(row.get("size"))
            .isCloseTo(Double.parseDouble(row.get("value")), withinPercentage(0.5));
      }
    }
  }

  @Test
  void flexibleConductorsAreThoseOfIec60228() {
    int rows = 0;
    for (CSVRecord row : ReferenceRows.of("conductors.csv")) {
      if (row.get("construction").equals("class 5")) {
        assertThat(of(row.get("size")).ohmsPerKilometre())
            .as(row.get("size"))
            .isEqualTo(Double.parseDouble(row.get("ohm_per_km")));
        rows++;
      }
    }
    assertThat(rows).isEqualTo(5);
  }

  @Test
  void thinnerCrossSectionsAreNominalAndSaySo() {
    for (CSVRecord row : ReferenceRows.of("conductors.csv")) {
      if (row.get("table").equals("not in IEC 60228")) {
        ConductorResistance found = of(row.get("size"));
        assertThat(found.ohmsPerKilometre())
            .isCloseTo(Double.parseDouble(row.get("ohm_per_km")), within(0.05));
        assertThat(found.source()).startsWith("nominal area").contains("10 to 25 % more");
      }
    }
  }

  /** reference/conductors.csv, worked examples. */
  @Test
  void loopsOfTwoWiresCheck() {
    double thin = ConductorResistance.ofSolidWire(22).ohmsPerKilometre();
    assertThat(new TwoWireRun(30, thin, 1).loopOhms()).isCloseTo(3.178, within(0.0005));
    assertThat(new TwoWireRun(30.48, 7.77 / 0.3048, 1).loopOhms()).isCloseTo(1.554, within(0.0005));
    assertThat(new TwoWireRun(30, thin, 2).loopOhms()).isCloseTo(1.589, within(0.0005));
    assertThat(new TwoWireRun(30, thin, 1).dropVolts(100)).isCloseTo(0.3178, within(0.00005));
  }

  @Test
  void oddGaugesAreComputedAndImpossibleSizesRefused() {
    assertThat(of("23 AWG").source()).contains("ASTM B258");
    assertThat(of("8 AWG").source()).contains("ASTM B258");
    assertThat(of("30 AWG").ohmsPerKilometre()).isPositive();
    assertThat(ConductorResistance.of(conductor("31 AWG"))).isEmpty();
    assertThat(of("1 AWG").ohmsPerKilometre()).isPositive();
    assertThat(ConductorResistance.of(conductor("0 AWG"))).isEmpty();
    assertThat(of("0.05 mm2").ohmsPerKilometre()).isPositive();
    assertThat(ConductorResistance.of(conductor("0.04 mm2"))).isEmpty();
    assertThat(ConductorResistance.of(conductor("38 AWG"))).isEmpty();
    assertThat(ConductorResistance.of(conductor("22 mm2"))).isPresent();
    assertThat(ConductorResistance.of(conductor("220 mm2"))).isEmpty();
  }

  private static ConductorResistance of(String size) {
    return ConductorResistance.of(conductor(size)).orElseThrow();
  }

  private static Conductor conductor(String size) {
    return Conductor.parse(size).find().orElseThrow();
  }
}
