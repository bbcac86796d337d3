package keenward.core.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Consumer;
import keenward.core.plan.Cable;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.DeviceTraits;
import keenward.core.plan.DeviceType;
import keenward.core.plan.Fact;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Standard;
import keenward.core.plan.SupplyBuilder;
import keenward.core.quantities.Conductor;
import keenward.core.quantities.Current;
import keenward.core.quantities.Length;
import org.junit.jupiter.api.Test;

class PowerAssessmentTest {
  private static final Consumer<SupplyBuilder> FULL =
      main ->
          main.voltage("13.6 V")
              .rating("600 mA")
              .own("100 mA", "150 mA")
              .charge("400 mA")
              .largestBattery("7 Ah")
              .battery("7 Ah")
              .lowestTemperature("10 C");

  /**
   * Arithmetic by hand: rest 100 + 12 + 40 = 152 mA, alarm 150 + 18 + 90 = 258 mA; 0.152 x 12 +
   * 0.258 x 0.25 = 1.8885 Ah; x 1.19 at 10 C x 1.25 = 2.8091 Ah.
   */
  @Test
  void theSumIsShownLineByLine() {
    PowerBudget budget = only(plan(FULL).grade(Standard.EN50131, 2).build());
    assertThat(budget.standby().text()).isEqualTo("Load at rest: 100 + 12 + 40 = 152 mA");
    assertThat(budget.alarm().text())
        .isEqualTo(
            "Load in alarm: 150 + 18 + 90 = 258 mA (every device in alarm at once, common practice)");
    BatteryNeed need = budget.strictest().orElseThrow();
    assertThat(need.charge().result()).isEqualTo("1.889 Ah");
    assertThat(need.needed().value()).isCloseTo(2.8091, within(0.0001));
    assertThat(budget.margin().orElseThrow().value()).isCloseTo(4.1909, within(0.0001));
    assertThat(budget.choice().orElseThrow().words()).isEqualTo("3.4 Ah");
    assertThat(budget.notAssessed()).isEmpty();
    assertThat(budget.lines())
        .extracting(Explained::name)
        .containsExactly(
            "Load at rest",
            "Load in alarm",
            "Charge taken out",
            "Temperature factor",
            "Age allowance",
            "Capacity needed",
            "Battery fitted",
            "Margin",
            "Recharge to 80 %",
            "Share of rating at rest",
            "Share of rating in alarm",
            "Fitted battery lasts at rest",
            "Fitted battery lasts in alarm",
            "Charging rate");
  }

  /** 1.1 x 7 Ah x 0.8 / 0.4 A = 15.4 h, within the 72 h of grade 2. */
  @Test
  void rechargeIsComparedWithTheStrictestRule() {
    PowerBudget budget =
        only(plan(FULL).grade(Standard.EN50131, 2).grade(Standard.EN50131, 3).build());
    Recharge recharge = budget.recharge().orElseThrow();
    assertThat(recharge.hours().value()).isCloseTo(15.4, within(1e-9));
    assertThat(recharge.rule().orElseThrow().words()).isEqualTo("80 % within 24 h");
  }

  @Test
  void ofSeveralRegimesTheStrictestRulesAndAllAreShown() {
    PowerBudget budget =
        only(
            plan(FULL)
                .regime(Standard.CP_01)
                .regime(Standard.UL1023)
                .regime(Standard.NFPA72_HOUSEHOLD)
                .build());
    assertThat(budget.needs())
        .extracting(need -> need.duty().regime())
        .containsExactly("ul1023", "nfpa72-household");
    assertThat(budget.strictest().orElseThrow().duty().regime()).isEqualTo("nfpa72-household");
  }

  @Test
  void anUnknownCurrentMakesTotalsAtLeastAndNamesTheDevice() {
    PowerBudget budget =
        only(
            plan(FULL)
                .grade(Standard.EN50131, 2)
                .device("Siren", DeviceKind.SIREN, siren -> siren.wired().drawsUnknown())
                .build());
    assertThat(budget.standby().result()).isEqualTo("at least 152 mA");
    assertThat(budget.strictest().orElseThrow().needed().result()).startsWith("at least ");
    assertThat(budget.margin().orElseThrow().result()).startsWith("at most ");
    assertThat(budget.notAssessed())
        .extracting(MissingFact::message)
        .containsExactly(
            "not assessed: the current of Siren at rest, so that totals say \"at least\"; add"
                + " `standby current: ... mA`",
            "not assessed: the current of Siren in alarm, so that totals say \"at least\"; add"
                + " `alarm current: ... mA`");
  }

  @Test
  void anUnknownAlarmCurrentCountsAtLeastTheOneAtRest() {
    PowerBudget budget =
        only(
            plan(FULL)
                .device("Module", DeviceKind.EXPANDER, module -> module.bus().drawsAtRest("30 mA"))
                .build());
    assertThat(budget.standby().result()).isEqualTo("182 mA");
    assertThat(budget.alarm().result()).isEqualTo("at least 288 mA");
  }

  @Test
  void plainSwitchesAndRadioDevicesDrawNothing() {
    PowerBudget budget =
        only(
            plan(FULL)
                .device("Contact", DeviceKind.CONTACT, contact -> contact.wired().supply("Main"))
                .device("Button", DeviceKind.HOLD_UP_BUTTON)
                .device("Radio motion", DeviceKind.MOTION, motion -> motion.radio())
                .build());
    assertThat(budget.standby().result()).isEqualTo("152 mA");
    assertThat(budget.loads().devices())
        .extracting(LoadLine::name)
        .containsExactly("Motion", "Keypad", "Contact");
  }

  @Test
  void eachLineSaysWhereItsFigureStands() {
    Fact<Current> twelve = Fact.of(Current.parse("12 mA").find().orElseThrow());
    DeviceTraits none = DeviceTraits.none();
    DeviceType wide =
        new DeviceType(
            "wide motion",
            new DeviceTraits(
                none.kind(),
                none.wiring(),
                none.inputs(),
                twelve,
                Fact.missing(),
                none.alarmTime(),
                none.minimumVoltage(),
                none.coverage(),
                none.cellLife(),
                none.replaceAfter(),
                none.securityGrade(),
                none.sensitivity(),
                none.frequency(),
                none.radioPower(),
                none.checkIn(),
                none.latching(),
                none.sound(),
                none.gaps(),
                none.load()));
    List<LoadLine> lines =
        only(plan(FULL)
                .type(new DeviceType("other", none))
                .type(wide)
                .device(
                    "Hall",
                    DeviceKind.MOTION,
                    hall -> hall.type("wide motion").supply("Main").draws("12 mA", "18 mA"))
                .device(
                    "Attic",
                    DeviceKind.MOTION,
                    attic -> attic.type("wide motion").supply("Main").drawsUnknown())
                .build())
            .loads()
            .lines();
    assertThat(lines)
        .extracting(LoadLine::standbySource)
        .containsExactly(
            "supplies / Main",
            "devices / Motion; the only supply",
            "devices / Keypad; the only supply",
            "types / wide motion",
            "not known");
    assertThat(lines.get(3).alarmSource()).isEqualTo("devices / Hall");
  }

  @Test
  void aBatteryOfNoCapacityIsASumLikeAnyOther() {
    PowerBudget budget =
        only(plan(FULL.andThen(main -> main.battery("0 Ah"))).regime(Standard.UL1023).build());
    assertThat(budget.margin().orElseThrow().value()).isNegative();
    assertThat(budget.recharge().orElseThrow().hours().value()).isZero();
    assertThat(budget.information()).isEmpty();
  }

  @Test
  void currentsOfZeroAreMissingRatherThanDividedBy() {
    PowerBudget budget =
        only(plan(FULL.andThen(main -> main.charge("0 mA").rating("0 mA"))).build());
    assertThat(budget.recharge()).isEmpty();
    assertThat(budget.output()).isEmpty();
    assertThat(budget.notAssessed())
        .extracting(MissingFact::lineToAdd)
        .contains("charge current: ... mA", "rating: ... mA");
  }

  @Test
  void aSizeThatFitsExactlyHasNoObstacle() {
    PowerBudget budget =
        only(
            plan(FULL.andThen(main -> main.largestBattery("18 Ah").charge("660 mA")))
                .grade(Standard.EN50131, 3)
                .build());
    assertThat(budget.choice().orElseThrow().words()).isEqualTo("18 Ah");
  }

  @Test
  void missingFactsOfASupplyAreNamedOneByOne() {
    PowerBudget budget = only(plan(main -> main.own("100 mA", "150 mA")).build());
    assertThat(budget.notAssessed())
        .extracting(MissingFact::lineToAdd)
        .containsExactly(
            "regime: ul1023",
            "lowest temperature: ... C",
            "battery: { capacity: ... Ah }",
            "charge current: ... mA",
            "rating: ... mA");
    assertThat(budget.needs()).isEmpty();
    assertThat(budget.margin()).isEmpty();
  }

  @Test
  void aTemperatureOutsideTheTableIsNotGuessed() {
    PowerBudget cold =
        only(
            plan(FULL.andThen(main -> main.lowestTemperature("-10 C")))
                .regime(Standard.UL1023)
                .build());
    assertThat(cold.strictest().orElseThrow().needed().result()).startsWith("at least ");
    assertThat(cold.strictest().orElseThrow().temperature().value()).isEqualTo(1.52);
    assertThat(cold.notAssessed().getFirst().why()).contains("outside IEEE Std 485");
    PowerBudget warm =
        only(
            plan(FULL.andThen(main -> main.lowestTemperature("30 C")))
                .regime(Standard.UL1023)
                .build());
    assertThat(warm.strictest().orElseThrow().temperature().value()).isEqualTo(1);
    assertThat(warm.strictest().orElseThrow().temperature().working())
        .contains("a warm battery is not credited");
  }

  /**
   * 0.152 x 60 + 0.258 x 0.25 = 9.1845; x 1.19 x 1.25 = 13.66 Ah: 18 Ah; 1.1 x 14.4 / 24 = 660 mA.
   */
  @Test
  void theNextSizeNamesWhatStandsInItsWay() {
    PowerBudget budget = only(plan(FULL).grade(Standard.EN50131, 3).build());
    assertThat(budget.choice().orElseThrow().words())
        .isEqualTo(
            "18 Ah, but the supply holds at most 7 Ah, 18 Ah is needed; charging 18 Ah to 80 %"
                + " within 24 h takes 660 mA, the supply gives 400 mA");
  }

  @Test
  void aNeedAboveEverySizeIsSaid() {
    PowerBudget budget =
        only(plan(FULL.andThen(main -> main.own("3 A", "4 A"))).grade(Standard.EN50131, 4).build());
    assertThat(budget.choice().orElseThrow().ampereHours()).isEmpty();
    assertThat(budget.choice().orElseThrow().words()).startsWith("no usual size is as large as");
  }

  /** Devices only: 12 + 40 of 600 mA at rest, 18 + 90 in alarm. */
  @Test
  void theSuppliesOwnBoardIsNoPartOfItsOutput() {
    OutputLoad output = only(plan(FULL).build()).output().orElseThrow();
    assertThat(output.atRest().value()).isCloseTo(52.0 / 6, within(1e-9));
    assertThat(output.inAlarm().value()).isCloseTo(18, within(1e-9));
  }

  @Test
  void withTwoSuppliesADeviceHasToSayWhichOrBeCabled() {
    PowerAssessment power =
        PowerAssessment.of(
            PlanBuilder.site()
                .supply("Main", FULL)
                .supply("Attic", FULL)
                .device(
                    "Motion", DeviceKind.MOTION, motion -> motion.wired().draws("12 mA", "18 mA"))
                .device("Keypad", DeviceKind.KEYPAD, keypad -> keypad.bus().draws("40 mA", "90 mA"))
                .cable(cable("C1", "Attic", "Keypad", "10 m", "0.5 mm2"))
                .build());
    assertThat(power.notAssessed())
        .extracting(MissingFact::message)
        .containsExactly(
            "not assessed: the load of Motion, which names none of the supplies; add `supply: Main`");
    assertThat(power.supplies().get(1).loads().devices().getFirst().standbySource())
        .isEqualTo("devices / Keypad; supply found by its cables");
  }

  @Test
  void aSiteWithoutSuppliesIsNotAssessed() {
    PowerAssessment power = PowerAssessment.of(PlanBuilder.site().build());
    assertThat(power.supplies()).isEmpty();
    assertThat(power.notAssessed()).hasSize(1);
    assertThat(power.notAssessed().getFirst().message()).startsWith("not assessed: standby");
  }

  /**
   * By hand with 0.5 mm2, class 5, 39.0 ohm/km at 20 C, 42.065 at 40 C (274.5 / 254.5): the first
   * 10 m carry 108 mA (0.0909 V), the branch of 20 m carries 18 mA (0.0303 V); 10.5 - 0.0909 -
   * 0.0303 = 10.3789 V.
   */
  @Test
  void eachCableCarriesWhatIsBeyondIt() {
    PowerAssessment power =
        PowerAssessment.of(
            plan(FULL)
                .cable(cable("C1", "Main", "Keypad", "10 m", "0.5 mm2"))
                .cable(cable("C2", "Keypad", "Motion", "20 m", "0.5 mm2"))
                .build());
    assertThat(power.notAssessed()).isEmpty();
    CableRun run = power.cableRuns().get(1);
    assertThat(run.device().name()).isEqualTo("Motion");
    assertThat(run.cables()).containsExactly("C1", "C2");
    assertThat(run.lines().getFirst().value()).isCloseTo(0.09086, within(0.00001));
    assertThat(run.volts().value()).isCloseTo(10.3789, within(0.0001));
  }

  @Test
  void aDoubledCableLosesHalf() {
    Cable single = cable("C1", "Main", "Motion", "50 m", "0.22 mm2");
    Cable doubled =
        new Cable("C1", "Main", "Motion", single.length(), single.conductor(), Fact.of(true));
    double lost = 10.5 - volts(single);
    assertThat(10.5 - volts(doubled)).isCloseTo(lost / 2, within(1e-9));
    assertThat(lost).isPositive();
  }

  @Test
  void cablesThatCannotBeComputedAreNotAssessed() {
    PowerAssessment power =
        PowerAssessment.of(
            plan(FULL)
                .cable("C1", "Main", "Motion", "10 m")
                .cable(cable("C2", "Main", "Keypad", "10 m", "0.5 mm2"))
                .cable(cable("C3", "Keypad", "Motion", "1 m", "0.5 mm2"))
                .cable(cable("C4", "Lost box", "Far box", "1 m", "0.5 mm2"))
                .build());
    // C1 and C3 make a ring: without the resistance of C1 none of its voltages is known.
    assertThat(power.notAssessed())
        .extracting(MissingFact::why)
        .containsExactly(
            "voltage at Keypad, since cable C1 lacks its conductor",
            "voltage at Motion, since cable C1 lacks its conductor",
            "voltage beyond cable C4, since no supply feeds Lost box");
    assertThat(power.cableRuns()).isEmpty();
  }

  /** 108 mA beyond the box flow in C1 whether or not C2 is known: 10 m of 0.5 mm2, 0.09086 V. */
  @Test
  void whatHangsBeyondAnUnknownCableStillDraws() {
    PowerAssessment power =
        PowerAssessment.of(
            plan(FULL)
                .cable(cable("C1", "Main", "Keypad", "10 m", "0.5 mm2"))
                .cable("C2", "Keypad", "Motion", "10 m")
                .build());
    assertThat(power.cableRuns()).extracting(run -> run.device().name()).containsExactly("Keypad");
    assertThat(power.cableRuns().getFirst().volts().value())
        .isCloseTo(10.5 - 0.09086, within(0.00001));
    assertThat(power.notAssessed())
        .extracting(MissingFact::why)
        .containsExactly("voltage at Motion, since cable C2 lacks its conductor");
  }

  @Test
  void theEndVoltageFollowsTheNumberOfCells() {
    assertThat(EndVoltage.of(13.6)).hasValue(10.5);
    assertThat(EndVoltage.of(27.2)).hasValue(21);
    assertThat(EndVoltage.of(6.8)).hasValue(5.25);
    assertThat(EndVoltage.of(18)).isEmpty();
  }

  private static double volts(Cable cable) {
    return PowerAssessment.of(plan(FULL).cable(cable).build())
        .cableRuns()
        .getFirst()
        .volts()
        .value();
  }

  private static Cable cable(String name, String from, String to, String length, String conductor) {
    return new Cable(
        name,
        from,
        to,
        Fact.of(Length.parse(length).find().orElseThrow()),
        Fact.of(Conductor.parse(conductor).find().orElseThrow()),
        Fact.missing());
  }

  private static PlanBuilder plan(Consumer<SupplyBuilder> supply) {
    return PlanBuilder.site()
        .supply("Main", supply)
        .device("Motion", DeviceKind.MOTION, motion -> motion.wired().draws("12 mA", "18 mA"))
        .device("Keypad", DeviceKind.KEYPAD, keypad -> keypad.bus().draws("40 mA", "90 mA"));
  }

  private static PowerBudget only(SitePlan plan) {
    List<PowerBudget> supplies = PowerAssessment.of(plan).supplies();
    assertThat(supplies).hasSize(1);
    return supplies.getFirst();
  }
}
