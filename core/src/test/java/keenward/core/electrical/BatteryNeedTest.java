package keenward.core.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import keenward.core.plan.Fact;
import org.junit.jupiter.api.Test;

/** reference/batteries.csv, worked examples A to F; A is printed in a published guide. */
class BatteryNeedTest {
  private record Example(
      String condition,
      double standbyAmperes,
      double hours,
      double alarmAmperes,
      double minutes,
      double factor,
      double size) {}

  private static final List<Example> EXAMPLES =
      List.of(
          new Example(
              "household 0.120 A x 24 h + 0.900 A x 4/60 h, x1.2", 0.12, 24, 0.9, 4, 1.2, 4),
          new Example(
              "burglary only 0.350 A x 4 h + 1.2 A x 4/60 h, x1.25", 0.35, 4, 1.2, 4, 1.25, 2.3),
          new Example("EN grade 2 type A: 0.250 A x 12 h, ageing 1.25", 0.25, 12, 0, 0, 1.25, 4),
          new Example(
              "EN grade 3 type A: 0.250 A x 60 h, halved when mains fault is signalled, ageing 1.25",
              0.25,
              30,
              0,
              0,
              1.25,
              12),
          new Example("voice 0.5 A x 24 h + 5 A x 15/60 h, x1.2", 0.5, 24, 5, 15, 1.2, 18));

  @Test
  void thePublishedExampleChecksToThePrintedDigit() {
    BatteryNeed need = need(0.42, 24, 3.8, 5, 1.2);
    assertThat(need.charge().value()).isCloseTo(10.3967, within(0.0001));
    assertThat(need.charge().text())
        .isEqualTo("Charge taken out: 0.42 A x 24 h + 3.8 A x 5/60 h = 10.397 Ah (test)");
    assertThat(need.needed().value()).isCloseTo(12.476, within(0.0005));
    assertThat(BatterySizes.nextUp(need.needed().value())).hasValue(18);
  }

  @Test
  void theOtherExamplesCheckWithTheirNextSize() {
    for (Example example : EXAMPLES) {
      BatteryNeed need =
          need(
              example.standbyAmperes(),
              example.hours(),
              example.alarmAmperes(),
              example.minutes(),
              example.factor());
      String item = "worked example " + (char) ('B' + EXAMPLES.indexOf(example));
      assertThat(need.needed().value())
          .as(example.condition())
          .isCloseTo(PeukertTest.value(item, example.condition()), within(0.0005));
      assertThat(BatterySizes.nextUp(need.needed().value()))
          .as(example.condition())
          .hasValue(example.size());
    }
  }

  /** reference: 0 C, aged, with a margin of 10 % gives 1.39 x 1.25 x 1.1 = 1.911 (interpolated). */
  @Test
  void everyFactorStandsOnItsOwnLineAndIsMultipliedVisibly() {
    BatteryNeed need =
        BatteryNeed.of(
            duty(10, 0),
            load("Load at rest", 100, Certainty.KNOWN),
            load("Load in alarm", 0, Certainty.KNOWN),
            Explained.known("Temperature factor", "at 0 C", 1.39, "", "test"),
            Explained.known("Age allowance", "", 1.25, "", "test"));
    assertThat(need.lines())
        .extracting(Explained::name)
        .containsExactly(
            "Charge taken out", "Temperature factor", "Age allowance", "Capacity needed");
    assertThat(need.needed().working()).isEqualTo("1 Ah x temperature 1.39 x age 1.25");
    assertThat(need.needed().value() * 1.1).isCloseTo(1.911, within(0.0005));
  }

  @Test
  void anUnknownCurrentMakesTheNeedAtLeast() {
    BatteryNeed need =
        BatteryNeed.of(
            duty(4, 4),
            load("Load at rest", 100, Certainty.AT_LEAST),
            load("Load in alarm", 100, Certainty.KNOWN),
            Explained.known("Temperature factor", "", 1, "", ""),
            Explained.known("Age allowance", "", 1, "", ""));
    assertThat(need.needed().result()).startsWith("at least ");
  }

  @Test
  void ageingAndARegimesMarginAreNeverStacked() {
    BatteryDuty household =
        new BatteryDuty("nfpa72-household", 24, 4, 1.2, Optional.empty(), "NFPA 72");
    assertThat(AgeAllowance.of(Fact.missing(), household).value()).isEqualTo(1.2);
    assertThat(AgeAllowance.of(Fact.of(1.25), household).value()).isEqualTo(1.25);
    assertThat(AgeAllowance.of(Fact.of(1.25), household).working())
        .isEqualTo("larger of ageing 1.25 and the regime's margin 1.2");
    assertThat(AgeAllowance.of(Fact.of(1.1), household).value()).isEqualTo(1.2);
    assertThat(AgeAllowance.of(Fact.missing(), duty(12, 15)).value()).isEqualTo(1.25);
    assertThat(AgeAllowance.of(Fact.of(1.0), duty(12, 15)).value()).isEqualTo(1.0);
  }

  @Test
  void sizesEndWithTheLargestUsualOne() {
    assertThat(BatterySizes.nextUp(7)).hasValue(7);
    assertThat(BatterySizes.nextUp(7.0001)).hasValue(8);
    assertThat(BatterySizes.nextUp(0)).hasValue(1.2);
    assertThat(BatterySizes.nextUp(100.1)).isEmpty();
  }

  private static BatteryNeed need(
      double standbyAmperes, double hours, double alarmAmperes, double minutes, double factor) {
    return BatteryNeed.of(
        duty(hours, minutes),
        load("Load at rest", standbyAmperes * 1000, Certainty.KNOWN),
        load("Load in alarm", alarmAmperes * 1000, Certainty.KNOWN),
        Explained.known("Temperature factor", "", 1, "", ""),
        Explained.known("Age allowance", "", factor, "", ""));
  }

  private static BatteryDuty duty(double hours, double minutes) {
    return new BatteryDuty("test", hours, minutes, 1, Optional.empty(), "test");
  }

  private static Explained load(String name, double milliamps, Certainty certainty) {
    return new Explained(name, "", milliamps, "mA", certainty, "");
  }
}
