package keenward.core.electrical.outage;

import static keenward.core.plan.DeviceKind.COMMUNICATOR;
import static keenward.core.plan.DeviceKind.SIREN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Consumer;
import keenward.core.electrical.PowerAssessment;
import keenward.core.electrical.PowerBudget;
import keenward.core.electrical.Recharge;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.Settings;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Standard;
import keenward.core.plan.SupplyBuilder;
import org.junit.jupiter.api.Test;

class OutagesTest {

  private static SupplyBuilder usual(SupplyBuilder supply) {
    return supply
        .voltage("13.7 V")
        .own("100 mA", "150 mA")
        .battery("7 Ah")
        .lowestTemperature("25 C")
        .ageingFactor(1);
  }

  private static PlanBuilder site(Consumer<SupplyBuilder> facts) {
    return PlanBuilder.site()
        .regime(Standard.UL1023)
        .supply("Main", supply -> facts.accept(usual(supply)));
  }

  private static PowerBudget budget(PlanBuilder plan) {
    return PowerAssessment.of(plan.build()).supplies().getFirst();
  }

  private static Outages outages(PlanBuilder builder) {
    SitePlan plan = builder.build();
    return Outages.of(plan, Settings.of(plan, Map.of()), PowerAssessment.of(plan));
  }

  private static Outage outage(PlanBuilder plan) {
    return outages(plan).outages().getFirst();
  }

  private static List<String> told(Outage outage) {
    return outage.events().stream().map(each -> each.when() + " " + each.line().name()).toList();
  }

  /** By hand: 0.12 A at rest, 0.55 A with the siren, 0.17 A after it; 11.8 V lies in the knee. */
  @Test
  void tellsInOrderWhatHappens() {
    Outage outage =
        outage(
            site(main -> main.signalsMainsFailure(true))
                .panel(panel -> panel.sounderTime("2 min").mainsFailureReport("1 h"))
                .device(
                    "Siren",
                    SIREN,
                    siren -> siren.wired().draws("20 mA", "400 mA").worksFrom("11.8 V")));
    assertThat(told(outage))
        .containsExactly(
            "0 h Mains fails",
            "1 h Mains failure is signalled",
            "4 h Time at rest is over, alarm begins",
            "4 h 2 min Siren is back at rest",
            "4 h 4 min All that ul1023 wants is done",
            deaths(outage),
            low(outage),
            end(outage));
    double atRest = 11.8 + 6 * 0.06 * 0.12 / 7;
    double share = 0.1 + (atRest / 6 - 1.96) / (2.0 - 1.96) * 0.15;
    double inAlarm = 0.55 * 2 / 60 + 0.17 * 2 / 60;
    double lost = inAlarmShare();
    double hours = 4 + 4 / 60.0 + (1 - share - 4 * 0.12 / 7 - lost) * 7 / 0.12;
    assertThat(outage.first(OutageEvent.Kind.DEVICE_DIES).orElseThrow().hours())
        .isCloseTo(hours, within(1e-6));
    assertThat(outage.last().ampereHours())
        .isCloseTo(4 * 0.12 + inAlarm + (outage.hours() - 4 - 4 / 60.0) * 0.12, within(1e-9));
  }

  /** Peukert by hand: 0.55 A is above the 20-hour rate of 0.35 A, 0.17 A below it. */
  private static double inAlarmShare() {
    return 2 / 60.0 / (20 * Math.pow(7 / 0.55 / 20, 1.15)) + 2 / 60.0 * 0.17 / 7;
  }

  private static String deaths(Outage outage) {
    return outage.first(OutageEvent.Kind.DEVICE_DIES).orElseThrow().when()
        + " Siren gets too little";
  }

  private static String low(Outage outage) {
    return outage.first(OutageEvent.Kind.LOW_BATTERY).orElseThrow().when()
        + " Low battery is signalled";
  }

  private static String end(Outage outage) {
    return OutageEvent.time(outage.hours()) + " Battery is empty";
  }

  @Test
  void aCableTakesItsShareSoThatTheDeviceBehindItDiesFirst() {
    PlanBuilder plan =
        site(main -> {})
            .device("Near", SIREN, each -> each.wired().draws("20 mA", "90 mA").worksFrom("11 V"))
            .device("Far", SIREN, each -> each.wired().draws("20 mA", "90 mA").worksFrom("11 V"))
            .cable("C1", "Main", "Far", "200 m", "0.22 mm2");
    List<OutageEvent> deaths =
        outage(plan).events().stream()
            .filter(each -> each.kind() == OutageEvent.Kind.DEVICE_DIES)
            .toList();
    assertThat(deaths)
        .extracting(each -> each.device().orElseThrow())
        .containsExactly("Far", "Near");
    assertThat(deaths.getFirst().line().working()).contains("V lost in cables, in alarm");
    assertThat(deaths.getLast().line().working()).contains("cables not counted");
  }

  @Test
  void dividesTheCapacityByColdAndAge() {
    Outage outage = outage(site(main -> main.lowestTemperature("10 C").ageingFactor(1.25)));
    assertThat(outage.available().value()).isCloseTo(7 / 1.19 / 1.25, within(1e-9));
    assertThat(outage.hours()).isLessThan(7 / 1.19 / 1.25 / 0.1);
  }

  @Test
  void twoBatteriesHoldTwiceAsMuchAndTakeTwiceAsLong() {
    PlanBuilder one = site(main -> main.charge("500 mA"));
    PlanBuilder two = site(main -> main.charge("500 mA").batteries(2).alike(true));
    assertThat(budget(two).fitted().orElseThrow().text())
        .startsWith("Batteries fitted: 2 in parallel x 7 Ah = 14 Ah");
    assertThat(budget(two).recharge().orElseThrow().hours().value())
        .isCloseTo(2 * budget(one).recharge().orElseThrow().hours().value(), within(1e-9));
    assertThat(outage(two).hours()).isCloseTo(2 * outage(one).hours(), within(0.1));
  }

  @Test
  void endsAtTheStatedCutOff() {
    Outage outage = outage(site(main -> main.cutOff("12 V")));
    assertThat(outage.last().volts()).isCloseTo(12, within(1e-9));
    assertThat(outage.last().share()).isBetween(0.25, 0.27);
    assertThat(outage.events().getLast().line().name()).isEqualTo("Battery is switched off");
    assertThat(outage(site(main -> main.cutOff("20 V"))).hours()).isZero();
  }

  @Test
  void theUnknownMakesTimesAtMost() {
    assertThat(
            outage(site(main -> {}).device("Reader", COMMUNICATOR, each -> each.bus()))
                .events()
                .getLast()
                .when())
        .startsWith("at most ");
  }

  @Test
  void whatCannotBeReckonedIsNotAssessed() {
    assertThat(why(site(main -> main.battery("0 Ah")))).contains("no capacity above 0 Ah");
    assertThat(why(site(main -> main.own("0 mA", "0 mA")))).contains("nothing is known to draw");
    assertThat(why(site(main -> main.voltage("1 V")))).contains("cannot be told");
    assertThat(
            outages(
                    site(main -> {})
                        .device("Eye", SIREN, each -> each.wired().draws("1 mA", "2 mA")))
                .notAssessed())
        .extracting(MissingFact::lineToAdd)
        .containsExactly("minimum voltage: ... V");
  }

  private static String why(PlanBuilder plan) {
    Outages outages = outages(plan);
    assertThat(outages.outages()).isEmpty();
    return outages.notAssessed().getFirst().why();
  }

  @Test
  void aTinyLoadEndsAfterAYear() {
    Outage outage = outage(site(main -> main.own("0.01 mA", "0.01 mA")));
    assertThat(outage.events().getLast().kind()).isEqualTo(OutageEvent.Kind.YEAR_OVER);
    assertThat(outage.hours()).isEqualTo(8760);
    assertThat(outage.hourly()).hasSizeLessThanOrEqualTo(Outage.MOST_ROWS);
  }

  @Test
  void aDeviceThatStopsEarlySavesCharge() {
    PlanBuilder whole =
        site(main -> {})
            .device("Sender", COMMUNICATOR, each -> each.bus().draws("30 mA", "230 mA"));
    PlanBuilder early =
        site(main -> {})
            .device(
                "Sender",
                COMMUNICATOR,
                each -> each.bus().draws("30 mA", "230 mA").alarmTime("1 min"));
    // 0.2 A less for the last 3 of 4 min: 0.01 Ah.
    assertThat(budget(whole).strictest().orElseThrow().charge().value())
        .isCloseTo(budget(early).strictest().orElseThrow().charge().value() + 0.01, within(1e-12));
    assertThat(budget(early).strictest().orElseThrow().charge().working())
        .endsWith("0.38 A x 4/60 h - 0.2 A x 3/60 h (Sender)");
    assertThat(told(outage(early))).contains("4 h 1 min Sender is back at rest");
  }

  @Test
  void whatTheLoadLeavesChargesTheBattery() {
    PowerBudget shared = budget(site(main -> main.charge("500 mA").totalCurrent("300 mA")));
    assertThat(shared.leftForBattery().orElseThrow().value()).isEqualTo(200);
    assertThat(shared.recharge().orElseThrow().hours().value())
        .isCloseTo(1.1 * 7 / 0.2, within(1e-9));
    PowerBudget ample = budget(site(main -> main.charge("500 mA").totalCurrent("2 A")));
    assertThat(ample.recharge().orElseThrow().hours().value())
        .isCloseTo(1.1 * 7 / 0.5, within(1e-9));
    assertThat(budget(site(main -> main.charge("500 mA").totalCurrent("100 mA"))).recharge())
        .isEmpty();
  }

  @Test
  void theChargeComesBackEvenlyToFourFifthsAndSlowerAfter() {
    List<Recharge.Point> curve =
        budget(site(main -> main.charge("500 mA"))).recharge().orElseThrow().curve();
    for (int index = 1; index < curve.size(); index++) {
      assertThat(curve.get(index).hours()).isGreaterThan(curve.get(index - 1).hours());
    }
    Recharge.Point four =
        curve.stream().filter(each -> each.share() == 0.8).findFirst().orElseThrow();
    assertThat(four.hours()).isCloseTo(1.1 * 7 * 0.8 / 0.5, within(1e-9));
    // 1.1 x 7 Ah x 0.2 / 0.5 A x ln(0.2 / 0.1) beyond 80 %.
    Recharge.Point nine =
        curve.stream().filter(each -> each.share() == 0.9).findFirst().orElseThrow();
    assertThat(nine.hours() - four.hours()).isCloseTo(3.08 * Math.log(2), within(1e-9));
  }

  @Test
  void rowsFollowTheDischarge() {
    Outage outage = outage(site(main -> {}));
    List<Outage.Moment> rows = outage.hourly();
    assertThat(rows.getFirst().share()).isEqualTo(1);
    assertThat(rows.getLast()).isEqualTo(outage.last());
    assertThat(outage.at(1).ampereHours()).isCloseTo(0.1, within(1e-12));
    for (int index = 1; index < rows.size(); index++) {
      assertThat(rows.get(index).share()).isLessThan(rows.get(index - 1).share());
    }
  }

  @Test
  void anotherLoadOrColdNeverMakesItLastLonger() {
    long seed = 77;
    Random random = new Random(seed);
    for (int round = 0; round < 300; round++) {
      int load = 1 + random.nextInt(400);
      int alarm = load + random.nextInt(600);
      int celsius = random.nextInt(50);
      double hours = hours(load, alarm, celsius);
      String where = "seed %d round %d".formatted(seed, round);
      assertThat(hours(load + 10, alarm + 10, celsius)).as(where).isLessThanOrEqualTo(hours);
      assertThat(hours(load, alarm + 50, celsius)).as(where).isLessThanOrEqualTo(hours);
      assertThat(hours(load, alarm, celsius - 3)).as(where).isLessThanOrEqualTo(hours);
    }
  }

  private static double hours(int load, int alarm, int celsius) {
    return outage(
            site(main -> main.lowestTemperature(celsius + " C"))
                .device(
                    "Load",
                    DeviceKind.EXPANDER,
                    each -> each.bus().draws(load + " mA", alarm + " mA")))
        .hours();
  }

  @Test
  void cellsAreDueWhenTheirLifeIsOver() {
    SitePlan plan =
        PlanBuilder.site()
            .device(
                "Late",
                DeviceKind.CONTACT,
                each -> each.radio().cellLife("3 y").fitted("2024-02-29"))
            .device(
                "Soon",
                DeviceKind.CONTACT,
                each -> each.radio().cellLife("2 y").fitted("2024-12-01"))
            .device("Undated", DeviceKind.CONTACT, each -> each.radio().cellLife("2 y"))
            .service("2024-01-27", "2024-11-27", "12 months")
            .build();
    OwnCells cells = OwnCells.of(plan);
    assertThat(cells.cells())
        .extracting(each -> each.device() + " " + each.due())
        .containsExactly("Soon 2026-12-01", "Late 2027-02-28");
    assertThat(cells.notAssessed())
        .extracting(MissingFact::lineToAdd)
        .containsExactly("fitted: YYYY-MM-DD");
    assertThat(cells.nextVisit()).contains(LocalDate.of(2025, 11, 27));
    assertThat(cells.dueBeforeNextVisit(LocalDate.of(2025, 1, 1))).isEmpty();
  }
}
