package keenward.core.electrical.loop;

import static keenward.core.plan.ContactForm.NORMALLY_CLOSED;
import static keenward.core.plan.ContactForm.NORMALLY_OPEN;
import static keenward.core.plan.LoopWiring.DOUBLE_RESISTOR;
import static keenward.core.plan.LoopWiring.NONE;
import static keenward.core.plan.LoopWiring.SINGLE_RESISTOR;
import static keenward.core.plan.LoopWiring.TRIPLE_RESISTOR;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import keenward.core.plan.ContactForm;
import keenward.core.plan.LoopWiring;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.SitePlan;
import keenward.core.plan.ZoneBuilder;
import keenward.core.plan.ZoneResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LoopTest {

  /** Nothing but resistors and copper at 20 C. */
  private static final LoopTolerances BARE =
      new LoopTolerances(0, Double.POSITIVE_INFINITY, 20, 20, 0.01);

  static Loop loop(
      LoopTolerances tolerances,
      LoopWiring wiring,
      ContactForm contact,
      java.util.function.Consumer<ZoneBuilder> more,
      String... resistors) {
    SitePlan plan =
        PlanBuilder.site()
            .zone(
                1,
                "Door",
                ZoneResponse.INSTANT,
                zone -> more.accept(zone.wiring(wiring, resistors).contact(contact)))
            .build();
    Loop.Found found = Loop.of(plan.zones().getFirst(), tolerances);
    assertThat(found).isInstanceOf(Loop.Found.Known.class);
    return ((Loop.Found.Known) found).loop();
  }

  private static Band band(Loop loop, LoopState state) {
    return Objects.requireNonNull(loop.bands().get(state), state.words());
  }

  /**
   * Worked example (computed for the project's reference figures): one resistor of 4.75 kohm, 1 %,
   * behind 100 m of solid 22 AWG, whose cores add 10.6 ohm: at most 4808 ohm at rest.
   */
  @Test
  void oneResistorBehindALongCable() {
    Loop loop =
        loop(
            BARE,
            SINGLE_RESISTOR,
            NORMALLY_CLOSED,
            zone -> zone.loopCable("100 m", "22 AWG"),
            "4.75 kohm");

    Band rest = band(loop, LoopState.AT_REST);
    assertThat(rest.mostOhms()).isCloseTo(4808, within(0.5));
    assertThat(rest.nominalOhms() - 4750).isCloseTo(10.6, within(0.05));
    assertThat(loop.bands().keySet())
        .containsExactly(LoopState.SHORT, LoopState.AT_REST, LoopState.ALARM_OR_CUT);
    assertThat(band(loop, LoopState.SHORT).mostOhms()).isCloseTo(10.6, within(0.05));
  }

  /** 1 Mohm across 4.75 kohm reads 4728 ohm (computed for the project's reference figures). */
  @Test
  void leakageLowersWhatIsRead() {
    assertThat(Loop.parallel(4750, 1_000_000)).isCloseTo(4728, within(0.5));
  }

  /** Alarm adds the second resistor, fault the third; common practice, no source. */
  @Test
  void threeResistorsTellSixStatesApart() {
    Loop loop =
        loop(BARE, TRIPLE_RESISTOR, NORMALLY_CLOSED, zone -> {}, "1 kohm", "1 kohm", "3.01 kohm");

    assertThat(loop.bands().keySet())
        .containsExactly(
            LoopState.SHORT,
            LoopState.AT_REST,
            LoopState.IN_ALARM,
            LoopState.IN_FAULT,
            LoopState.ALARM_AND_FAULT,
            LoopState.CUT);
    assertThat(loop.bands().values().stream().map(Band::nominalOhms))
        .containsExactly(0.0, 1000.0, 2000.0, 4010.0, 5010.0, Double.POSITIVE_INFINITY);
    // 1 kohm is a value of E24 (5 %), 3.01 kohm of E96 alone (1 %).
    assertThat(band(loop, LoopState.IN_FAULT).mostOhms()).isCloseTo(1050 + 3040.1, within(1e-9));
    assertThat(band(loop, LoopState.IN_FAULT).leastOhms()).isCloseTo(950 + 2979.9, within(1e-9));
  }

  @Test
  void aContactThatIsOpenAtRestShortsTheLoopInAlarm() {
    Loop loop = loop(BARE, SINGLE_RESISTOR, NORMALLY_OPEN, zone -> {}, "4.7 kohm");

    assertThat(loop.bands().keySet())
        .containsExactly(LoopState.ALARM_OR_SHORT, LoopState.AT_REST, LoopState.CUT);
  }

  @Test
  void withoutAResistorThereAreTwoStates() {
    assertThat(loop(BARE, NONE, NORMALLY_CLOSED, zone -> {}).bands().keySet())
        .containsExactly(LoopState.AT_REST, LoopState.ALARM_OR_CUT);
    assertThat(loop(BARE, NONE, NORMALLY_OPEN, zone -> {}).bands().keySet())
        .containsExactly(LoopState.ALARM_OR_SHORT, LoopState.REST_OR_CUT);
  }

  @Test
  void judgesByTheThresholdsOfThePanel() {
    Loop loop =
        loop(
            LoopTolerances.USUAL,
            DOUBLE_RESISTOR,
            NORMALLY_CLOSED,
            zone -> zone.loopCable("60 m", "0.22 mm2"),
            "4.7 kohm",
            "4.7 kohm");

    LoopCheck good = LoopCheck.of(loop, List.of(1000.0, 7000.0, 14_000.0)).orElseThrow();
    assertThat(good.holds()).isTrue();
    // In alarm it reads at least 2 x 4465 ohm and the cold cable, beside 1 Mohm: 27 % above 7 kohm.
    assertThat(good.steps().get(1).spareShare()).isCloseTo(0.266, within(0.002));
    LoopCheck bad = LoopCheck.of(loop, List.of(1000.0, 4800.0, 14_000.0)).orElseThrow();
    assertThat(bad.holds()).isFalse();
    assertThat(bad.longestMetres()).isEmpty();
    assertThat(LoopCheck.of(loop, List.of(1000.0, 7000.0))).as("too few").isEmpty();
  }

  /** At that length it holds, a metre farther it does not. */
  @ParameterizedTest
  @CsvSource({"1000, 5100, 14000", "120, 7000, 14000", "1000, 7000, 10100"})
  void findsTheLongestCable(double one, double two, double three) {
    List<Double> thresholds = List.of(one, two, three);
    double longest =
        LoopCheck.of(doubleAt("60 m"), thresholds).orElseThrow().longestMetres().orElseThrow();

    assertThat(longest).isBetween(50.0, 19_000.0);
    assertThat(LoopCheck.of(doubleAt(longest + " m"), thresholds).orElseThrow().holds()).isTrue();
    assertThat(LoopCheck.of(doubleAt(longest + 1 + " m"), thresholds).orElseThrow().holds())
        .isFalse();
  }

  private static Loop doubleAt(String length) {
    return loop(
        LoopTolerances.USUAL,
        DOUBLE_RESISTOR,
        NORMALLY_CLOSED,
        zone -> zone.loopCable(length, "0.22 mm2"),
        "4.7 kohm",
        "4.7 kohm");
  }

  /** IEC 60063: 4.7 and 5.6 are of E24 only, 4.75 and 5.62 of E96 only. */
  @ParameterizedTest
  @CsvSource({
    "4700, 0.05",
    "5600, 0.05",
    "4750, 0.01",
    "5620, 0.01",
    "1000, 0.05",
    "4700000, 0.05",
    "1234, 0.05"
  })
  void toleranceGoesWithTheSeries(double ohms, double share) {
    assertThat(StandardValues.toleranceShare(ohms)).isEqualTo(share);
  }

  @ParameterizedTest
  @CsvSource({"4690, 4700", "2290, 2200", "97, 100", "9.4, 9.1", "880000, 910000"})
  void findsTheNearestValue(double ohms, double nearest) {
    assertThat(StandardValues.nearestE24(ohms)).isCloseTo(nearest, within(1e-6 * nearest));
  }
}
