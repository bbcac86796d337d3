package keenward.core.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import keenward.core.plan.Cable;
import keenward.core.plan.DeviceBuilder;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Fact;
import keenward.core.plan.LoadKind;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanBuilder;
import keenward.core.quantities.Temperature;
import org.junit.jupiter.api.Test;

class CableNetworksTest {

  // 0.5 mm2, IEC 60228 class 5: 39.0 ohm/km at 20 C, x 274.5 / 254.5 = 42.0648 ohm/km at 40 C;
  // 100 m there and back 8.41297 ohm.
  private static final double OHMS_OF_100_METRES = 2 * 0.1 * 39.0 * 274.5 / 254.5;

  private static PlanBuilder site() {
    return PlanBuilder.site().supply("Main", main -> main.voltage("13.6 V"));
  }

  private static PlanBuilder siren(PlanBuilder plan, Consumer<DeviceBuilder> details) {
    return plan.device(
        "Siren",
        DeviceKind.SIREN,
        device ->
            details.accept(
                device.wired().supply("Main").draws("10 mA", "200 mA").worksFrom("10 V")));
  }

  private static PowerAssessment of(PlanBuilder plan) {
    return PowerAssessment.of(plan.build());
  }

  @Test
  void eachStateHasItsVoltage() {
    PowerAssessment power =
        of(siren(site(), siren -> {}).cable("C1", "Main", "Siren", "100 m", "0.5 mm2"));

    Map<CableState, Double> volts = power.networks().getFirst().places().getFirst().volts();
    assertThat(volts.get(CableState.FULL_AT_REST))
        .isCloseTo(12.6 - 0.01 * OHMS_OF_100_METRES, within(1e-9));
    assertThat(volts.get(CableState.FULL_IN_ALARM))
        .isCloseTo(12.6 - 0.2 * OHMS_OF_100_METRES, within(1e-9));
    assertThat(volts.get(CableState.EMPTY_IN_ALARM))
        .isCloseTo(10.5 - 0.2 * OHMS_OF_100_METRES, within(1e-9));
    assertThat(power.cableRuns().getFirst().volts().value())
        .isEqualTo(volts.get(CableState.EMPTY_IN_ALARM));
  }

  /** P = 0.2 A x 12 V; V = (E + sqrt(E^2 - 4 R P)) / 2. */
  @Test
  void aLoadOfConstantPowerDrawsMoreWhenTheVoltageFalls() {
    PowerAssessment power =
        of(
            siren(site(), siren -> siren.load(LoadKind.POWER))
                .cable("C1", "Main", "Siren", "100 m", "0.5 mm2"));

    double volts = (10.5 + Math.sqrt(10.5 * 10.5 - 4 * OHMS_OF_100_METRES * 2.4)) / 2;
    CableRun run = power.cableRuns().getFirst();
    assertThat(run.volts().value()).isCloseTo(volts, within(1e-9));
    assertThat(run.lines().getFirst().working())
        .endsWith(" x " + Figures.text(2.4 / volts * 1000) + " mA");
  }

  /** A resistance of 12 V / 0.2 A = 60 ohm divides the voltage. */
  @Test
  void aResistanceDrawsLessWhenTheVoltageFalls() {
    PowerAssessment power =
        of(
            siren(site(), siren -> siren.load(LoadKind.RESISTANCE))
                .cable("C1", "Main", "Siren", "100 m", "0.5 mm2"));

    assertThat(power.cableRuns().getFirst().volts().value())
        .isCloseTo(10.5 * 60 / (60 + OHMS_OF_100_METRES), within(1e-9));
  }

  /** 700 m: 58.9 ohm pass on at most 10.5^2 / (4 x 58.9) = 0.468 W, and 2.4 W are wanted. */
  @Test
  void moreThanTheCableCanPassOnIsACollapse() {
    PowerAssessment power =
        of(
            siren(site(), siren -> siren.load(LoadKind.POWER))
                .cable("C1", "Main", "Siren", "700 m", "0.5 mm2"));

    CableRun run = power.cableRuns().getFirst();
    assertThat(run.isCollapsed()).isTrue();
    assertThat(run.volts().value()).isZero();
    assertThat(power.networks().getFirst().collapsed())
        .containsExactlyInAnyOrder(CableState.FULL_IN_ALARM, CableState.EMPTY_IN_ALARM);
    assertThat(power.networks().getFirst().places().getFirst().volts())
        .containsOnlyKeys(CableState.FULL_AT_REST);
  }

  @Test
  void aCollapseLeavesOtherCablesOfTheSupplyAlone() {
    PowerAssessment power =
        of(
            siren(site(), siren -> siren.load(LoadKind.POWER))
                .device(
                    "Motion", DeviceKind.MOTION, device -> device.wired().draws("10 mA", "10 mA"))
                .cable("C1", "Main", "Siren", "700 m", "0.5 mm2")
                .cable("C2", "Main", "Motion", "10 m", "0.5 mm2"));

    assertThat(power.networks()).hasSize(2);
    assertThat(power.cableRuns()).extracting(CableRun::isCollapsed).containsExactly(true, false);
  }

  /** Two ways of 100 m and of 300 m side by side: a quarter of the current goes the long way. */
  @Test
  void aRingSharesTheCurrent() {
    PowerAssessment power =
        of(
            siren(site(), siren -> {})
                .device("Box", DeviceKind.EXPANDER, device -> device.wired().draws("0 mA", "0 mA"))
                .cable("C1", "Main", "Siren", "100 m", "0.5 mm2")
                .cable("C2", "Main", "Box", "100 m", "0.5 mm2")
                .cable("C3", "Box", "Siren", "200 m", "0.5 mm2"));

    CableNetwork network = power.networks().getFirst();
    assertThat(network.isRing()).isTrue();
    assertThat(network.cables())
        .extracting(line -> line.milliamps().get(CableState.EMPTY_IN_ALARM))
        .usingComparatorForType((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : 1, Double.class)
        .containsExactly(150.0, 50.0, 50.0);
    assertThat(network.breaks())
        .extracting(CableNetwork.Break::cable)
        .containsExactly("C1", "C2", "C3");
    // Without C1 all of it flows through 300 m.
    assertThat(network.breaks().getFirst().volts().get("Siren"))
        .isCloseTo(10.5 - 0.2 * 3 * OHMS_OF_100_METRES, within(1e-9));
    assertThat(network.totalMetres()).isEqualTo(400);
  }

  @Test
  void twoSuppliesOnOneCableAreNotAssessed() {
    PowerAssessment power =
        of(
            siren(site(), siren -> {})
                .supply("Second", second -> second.voltage("13.6 V"))
                .cable("C1", "Main", "Siren", "10 m", "0.5 mm2")
                .cable("C2", "Second", "Siren", "10 m", "0.5 mm2"));

    assertThat(power.networks()).isEmpty();
    assertThat(power.notAssessed())
        .extracting(MissingFact::why)
        .containsExactly("voltage beyond cable C1, since Main and Second both feed Siren");
  }

  @Test
  void aWarmerConductorLosesMore() {
    Cable cool =
        siren(site(), siren -> {})
            .cable("C1", "Main", "Siren", "100 m", "0.5 mm2")
            .build()
            .cables()
            .getFirst();
    Cable warm =
        new Cable(
            cool.name(),
            cool.from(),
            cool.to(),
            cool.length(),
            cool.conductor(),
            cool.doubled(),
            Fact.of(Temperature.parse("70 C").find().orElseThrow()),
            Fact.missing());

    // IEC 60228: resistance grows with 234.5 + t.
    assertThat(
            10.5
                - of(siren(site(), siren -> {}).cable(warm)).cableRuns().getFirst().volts().value())
        .isCloseTo(0.2 * 2 * 0.1 * 39.0 * 304.5 / 254.5, within(1e-9));
  }

  /**
   * 100 m of 0.5 mm2 leave 10.5 - 1.683 = 8.817 V, and 10 V are needed, 2.5 ohm at most. Two cores:
   * 9.659 V, too little. 0.75 mm2 (26.0): 9.378 V; 1 mm2 (19.5): 9.659 V; 1.5 mm2 (13.3): 9.926 V;
   * 2.5 mm2 (7.98): 10.156 V. Shorter: 0.5 V / 0.2 A / 0.0841297 ohm/m = 29.7 m.
   */
  @Test
  void remediesAreComputed() {
    PowerAssessment power =
        of(siren(site(), siren -> {}).cable("C1", "Main", "Siren", "100 m", "0.5 mm2"));

    assertThat(power.cableRuns().getFirst().remedies())
        .extracting(Remedy::text)
        .containsExactly(
            "C1 in 2.5 mm2: 10.15 V",
            "C1 no longer than 29 m: 10.01 V",
            "a supply of its own beside 'Siren': 10.5 V");
  }

  /** The figures printed in docs/methods/cables.md. */
  @Test
  void theWorkedExample() {
    PowerAssessment power =
        of(siren(site(), siren -> {}).cable("C1", "Main", "Siren", "100 m", "0.5 mm2"));
    assertThat(power.networks().getFirst().cables().getFirst().ohms().text())
        .startsWith("Resistance of C1: 2 x 100 m x 42.065 ohm/km = 8.413 ohm");
    assertThat(Figures.text(power.cableRuns().getFirst().volts().value())).isEqualTo("8.817");
    assertThat(power.cableRuns().getFirst().remedies())
        .extracting(remedy -> Figures.text(remedy.volts()))
        .containsExactly("10.156", "10.012", "10.5");
    PowerAssessment regulated =
        of(
            siren(site(), siren -> siren.load(LoadKind.POWER))
                .cable("C1", "Main", "Siren", "100 m", "0.5 mm2"));
    assertThat(regulated.cableRuns().getFirst().volts().value()).isCloseTo(7.965, within(0.0005));
  }

  @Test
  void whereOneCableIsNotEnoughAllGrow() {
    PowerAssessment power =
        of(
            siren(site(), siren -> {})
                .device("Box", DeviceKind.EXPANDER, device -> device.wired().draws("0 mA", "0 mA"))
                .cable("C1", "Main", "Box", "60 m", "0.5 mm2")
                .cable("C2", "Box", "Siren", "60 m", "0.5 mm2"));

    // Together as 120 m of one size: 2.5 mm2 gives 10.5 - 0.2 x 2 x 0.12 x 7.98 x 274.5 / 254.5.
    assertThat(power.cableRuns().getLast().remedies())
        .extracting(Remedy::text)
        .containsExactly(
            "C1 in 2.5 mm2, C2 in 2.5 mm2: 10.08 V", "a supply of its own beside 'Siren': 10.5 V");
  }

  @Test
  void aSupplyWithoutAKnownCableHasNoNetwork() {
    PowerAssessment power = of(siren(site(), siren -> {}).cable("C1", "Main", "Siren", "100 m"));

    assertThat(power.networks()).isEmpty();
    assertThat(power.notAssessed())
        .extracting(MissingFact::why)
        .containsExactly("voltage at Siren, since cable C1 lacks its conductor");
  }

  /** Beyond the unknown cable the siren gets less, so draws more than at the keypad. */
  @Test
  void aRegulatorBeyondAnUnknownCableMakesItAtMost() {
    PowerAssessment power =
        of(
            siren(site(), siren -> siren.load(LoadKind.POWER))
                .device("Keypad", DeviceKind.KEYPAD, keypad -> keypad.bus().draws("9 mA", "9 mA"))
                .cable("C1", "Main", "Keypad", "10 m", "0.5 mm2")
                .cable("C2", "Keypad", "Siren", "10 m"));

    assertThat(power.cableRuns().getFirst().volts().certainty()).isEqualTo(Certainty.AT_MOST);
  }

  @Test
  void anUnknownCurrentMakesItAtMost() {
    PowerAssessment power =
        of(
            site()
                .device("Siren", DeviceKind.SIREN, device -> device.wired().supply("Main"))
                .cable("C1", "Main", "Siren", "10 m", "0.5 mm2"));

    assertThat(power.cableRuns().getFirst().volts().certainty()).isEqualTo(Certainty.AT_MOST);
    assertThat(power.networks().getFirst().certainty()).isEqualTo(Certainty.AT_MOST);
    assertThat(List.of(power.cableRuns().getFirst().lines().getFirst().certainty()))
        .containsExactly(Certainty.AT_LEAST);
  }
}
