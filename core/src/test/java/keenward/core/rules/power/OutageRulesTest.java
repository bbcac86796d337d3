package keenward.core.rules.power;

import static keenward.core.plan.DeviceKind.CONTACT;
import static keenward.core.plan.DeviceKind.SIREN;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.lines;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.function.Consumer;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.Standard;
import keenward.core.plan.SupplyBuilder;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Report;
import org.junit.jupiter.api.Test;

/** Just on, and just past, each limit. */
class OutageRulesTest {

  private static PlanBuilder site(Consumer<SupplyBuilder> facts) {
    return PlanBuilder.site()
        .regime(Standard.UL1023)
        .supply(
            "Main",
            main ->
                facts.accept(
                    main.voltage("13.7 V")
                        .own("200 mA", "300 mA")
                        .battery("7 Ah")
                        .lowestTemperature("25 C")
                        .ageingFactor(1.25)));
  }

  private static PlanBuilder siren(PlanBuilder plan, String least) {
    return plan.device(
        "Siren", SIREN, each -> each.wired().draws("10 mA", "300 mA").worksFrom(least));
  }

  @Test
  void aDeviceMayDieOnlyAfterTheTimeThatIsWanted() {
    assertThat(findings(new DeviceDiesEarly(), siren(site(main -> main.battery("2 Ah")), "12.2 V")))
        .singleElement()
        .asString()
        .startsWith(
            "error at devices / Siren / minimum voltage: On the battery of 'Main', 'Siren' gets"
                + " too little after ")
        .contains("ul1023 wants 4 h 4 min");
    assertThat(findings(new DeviceDiesEarly(), siren(site(main -> main.battery("2 Ah")), "11.9 V")))
        .isEmpty();
  }

  @Test
  void aDeviceThatItsCablesStarveAnywayIsLeftToThatRule() {
    PlanBuilder plan =
        siren(site(main -> main.battery("2 Ah")), "12.2 V")
            .cable("C1", "Main", "Siren", "30 m", "0.22 mm2");
    assertThat(findings(new VoltageTooLow(), plan)).hasSize(1);
    assertThat(findings(new DeviceDiesEarly(), plan)).isEmpty();
  }

  @Test
  void withoutVoltageNothingIsSaidToLast() {
    PlanBuilder plan =
        PlanBuilder.site()
            .regime(Standard.UL1023)
            .supply("Main", main -> main.own("9 mA", "9 mA").battery("7 Ah"));
    assertThat(findings(new DeviceDiesEarly(), plan)).isEmpty();
    assertThat(notAssessed(new DeviceDiesEarly(), plan)).hasSize(1);
  }

  @Test
  void aHighCutOffOrAHeavyLoadEndsTheTimeEarly() {
    assertThat(
            findings(new StandbyEndsEarly(), site(main -> main.battery("2 Ah").cutOff("12.2 V"))))
        .singleElement()
        .asString()
        .startsWith("error at supplies / Main / cut off: The battery of 'Main' ends after ")
        .contains("ul1023 wants 4 h 4 min");
    assertThat(
            findings(new StandbyEndsEarly(), site(main -> main.battery("2 Ah").cutOff("11.9 V"))))
        .isEmpty();
    // 1.3 A x 4 h + 2 A x 4/60 h = 5.33 Ah, x 1.25 = 6.67 Ah: enough on paper, not by Peukert.
    PlanBuilder heavy = site(main -> main.own("1300 mA", "2000 mA"));
    assertThat(findings(new BatteryTooSmall(), heavy)).isEmpty();
    assertThat(findings(new StandbyEndsEarly(), heavy)).hasSize(1);
    PlanBuilder tooSmall = site(main -> main.own("3000 mA", "3000 mA"));
    assertThat(findings(new BatteryTooSmall(), tooSmall)).hasSize(1);
    assertThat(findings(new StandbyEndsEarly(), tooSmall)).isEmpty();
  }

  @Test
  void theLoadAtRestMustLeaveSomethingForTheBattery() {
    assertThat(findings(new ChargerOverdrawn(), site(main -> main.totalCurrent("200 mA"))))
        .containsExactly(
            "error at supplies / Main / total current: At rest 200 mA are drawn from 'Main', which"
                + " has 200 mA for load and battery together: its battery is not charged.");
    assertThat(findings(new ChargerOverdrawn(), site(main -> main.totalCurrent("201 mA"))))
        .isEmpty();
    assertThat(
            notAssessed(
                new ChargerOverdrawn(),
                site(main -> main.totalCurrent("201 mA"))
                    .device("Siren", SIREN, each -> each.wired())))
        .hasSize(1);
    PlanBuilder slow =
        site(main -> main.totalCurrent("200 mA").charge("1 A")).grade(Standard.EN50131, 3);
    assertThat(findings(new RechargeTooSlow(), slow)).isEmpty();
    assertThat(notAssessed(new RechargeTooSlow(), slow)).isEmpty();
  }

  @Test
  void aBatteryTakesThreeTenthsOfItsCapacity() {
    assertThat(findings(new ChargingTooFast(), site(main -> main.charge("2.1 A")))).isEmpty();
    assertThat(findings(new ChargingTooFast(), site(main -> main.charge("2.11 A"))))
        .containsExactly(
            "warning at supplies / Main / charge current: Supply 'Main' charges 7 Ah with up to"
                + " 2.11 A, 0.3 A for each Ah; 0.3 is the usual most.");
    assertThat(findings(new ChargingTooFast(), site(main -> main.charge("4.2 A").batteries(2))))
        .isEmpty();
  }

  @Test
  void batteriesInParallelAreAlikeAndFew() {
    assertThat(findings(new BatteriesUnlike(), site(main -> main.batteries(2).alike(false))))
        .containsExactly(
            "error at supplies / Main / battery / alike: The 2 batteries in parallel of 'Main' are"
                + " not alike.");
    assertThat(notAssessed(new BatteriesUnlike(), site(main -> main.batteries(2)))).hasSize(1);
    assertThat(findings(new BatteriesUnlike(), site(main -> main.alike(false)))).isEmpty();
    assertThat(findings(new TooManyBatteries(), site(main -> main.batteries(5)))).hasSize(1);
    assertThat(findings(new TooManyBatteries(), site(main -> main.batteries(4)))).isEmpty();
  }

  @Test
  void temperaturesLieInTheTableOfIeee485() {
    var rule = new BatteryOutsideTemperatures();
    assertThat(findings(rule, site(main -> main.lowestTemperature("-3.9 C")))).isEmpty();
    assertThat(findings(rule, site(main -> main.lowestTemperature("-4 C")))).hasSize(1);
    assertThat(findings(rule, site(main -> main.usualTemperature("51.7 C")))).isEmpty();
    assertThat(findings(rule, site(main -> main.usualTemperature("52 C")))).hasSize(1);
  }

  /** 48 months halved for each 10 K above 25 C: 24 at 35 C, 12 at 45 C. */
  @Test
  void heatHalvesTheLife() {
    var rule = new BatteryInHeat();
    assertThat(findings(rule, site(main -> main.usualTemperature("34.9 C")))).isEmpty();
    assertThat(findings(rule, site(main -> main.usualTemperature("35 C"))))
        .singleElement()
        .asString()
        .contains("lasts about 24 months instead of 48.");
    assertThat(findings(rule, site(main -> main.usualTemperature("45 C"))))
        .singleElement()
        .asString()
        .contains("about 12 months");
    assertThat(notAssessed(rule, site(main -> {}))).hasSize(1);
  }

  @Test
  void aSupplyDoesNotEmptyItsBatteryBelowNinePointSixVolts() {
    assertThat(findings(new CutOffTooLow(), site(main -> main.cutOff("9.6 V")))).isEmpty();
    assertThat(findings(new CutOffTooLow(), site(main -> main.cutOff("9.5 V")))).hasSize(1);
    assertThat(findings(new CutOffTooLow(), site(main -> main.voltage("27.4 V").cutOff("19.2 V"))))
        .isEmpty();
    assertThat(notAssessed(new CutOffTooLow(), site(main -> main.voltage("1 V").cutOff("9 V"))))
        .hasSize(1);
  }

  @Test
  void aCellLastsFromVisitToVisit() {
    LocalDate today = LocalDate.of(2026, 11, 27);
    // The next visit is on 2 October 2027.
    assertThat(cells("2025-10-01", "2026-10-02", today).findings()).hasSize(1);
    assertThat(cells("2025-10-02", "2026-10-02", today).findings()).isEmpty();
    // Its last day is today; a day later it is past its life, which is REC-02.
    assertThat(cells("2024-11-27", "2026-10-02", today).findings()).hasSize(1);
    assertThat(cells("2024-11-26", "2026-10-02", today).findings()).isEmpty();
    assertThat(lines(cells("2025-10-01", "2026-10-02", today)))
        .containsExactly(
            "warning at devices / Door / fitted: The cell of 'Door' was fitted on 2025-10-01 for"
                + " 2 y, to 2027-10-01; the next visit is on 2027-10-02.");
  }

  @Test
  void withoutDayOrVisitCellsAreNotAssessed() {
    PlanBuilder plan =
        PlanBuilder.site()
            .device("Door", CONTACT, each -> each.radio().cellLife("2 y").fitted("2026-01-01"));
    assertThat(notAssessed(new CellDueBeforeVisit(), plan))
        .singleElement()
        .asString()
        .contains("--as-of");
    assertThat(
            notAssessed(
                run(
                    new CellDueBeforeVisit(),
                    CheckInput.of(plan.build()).asOf(LocalDate.of(2026, 11, 27)))))
        .singleElement()
        .asString()
        .contains("before the next visit");
  }

  private static Report cells(String fitted, String lastVisit, LocalDate day) {
    PlanBuilder plan =
        PlanBuilder.site()
            .device("Door", CONTACT, each -> each.radio().cellLife("2 y").fitted(fitted))
            .service("2020-01-01", lastVisit, "12 months");
    return run(new CellDueBeforeVisit(), CheckInput.of(plan.build()).asOf(day));
  }
}
