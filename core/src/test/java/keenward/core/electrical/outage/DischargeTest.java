package keenward.core.electrical.outage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import keenward.core.electrical.Peukert;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DischargeTest {
  private static final double FOREVER = Double.POSITIVE_INFINITY;

  private static List<Outage.Stretch> run(double ampereHours, Discharge.Phase... phases) {
    return new Discharge(ampereHours, 6, 10.5).run(List.of(phases));
  }

  private static Outage.Moment end(double ampereHours, double milliamps) {
    return run(ampereHours, new Discharge.Phase(FOREVER, milliamps, false)).getLast().to();
  }

  /** Open-circuit volts of a 12 V battery by charge left: common practice, from memory. */
  @ParameterizedTest
  @CsvSource({"1, 12.6", "0.75, 12.4", "0.5, 12.2", "0.25, 12.0", "0.625, 12.3"})
  void showsTheUsualVoltsAtRest(double share, double volts) {
    assertThat(DischargeCurve.volts(share, 6, 0, 7)).isCloseTo(volts, within(1e-9));
  }

  /** The definition of the marked capacity: 10.5 V after 20 h at a twentieth of it. */
  @Test
  void reachesTheEndVoltageWithTheMarkedCapacityAtTheTwentyHourRate() {
    Outage.Moment end = end(7, 350);
    assertThat(end.hours()).isCloseTo(20, within(1e-9));
    assertThat(end.volts()).isCloseTo(10.5, within(1e-9));
    assertThat(end.ampereHours()).isCloseTo(7, within(1e-9));
  }

  /** Reference figures of Peukert's law, 18 Ah at 3 A with k 1.15: 5.009 h; here less the knee. */
  @Test
  void heavyLoadsEndSoonerThanPeukertAllowsSinceTheCutOffComesFirst() {
    Outage.Moment end = end(18, 3000);
    assertThat(end.hours()).isBetween(0.98 * 5.009, 5.009);
    assertThat(end.volts()).isCloseTo(10.5, within(1e-9));
    assertThat(end.share()).isPositive();
  }

  @Test
  void aLightLoadEarnsNoMoreThanTheMarkedCapacity() {
    Outage.Moment end = end(7, 100);
    assertThat(end.ampereHours()).isCloseTo(7, within(1e-9));
    assertThat(end.share()).isZero();
  }

  @Test
  void stopsAfterAYear() {
    assertThat(end(7, 0.1).hours()).isEqualTo(Discharge.YEAR_HOURS);
    assertThat(end(7, 1e-300).hours()).isEqualTo(Discharge.YEAR_HOURS);
    assertThat(run(7, new Discharge.Phase(FOREVER, 0, false))).hasSize(1);
  }

  /** Against small Euler steps of a minute, written anew here. */
  @Test
  void agreesWithStepsOfAMinuteWhateverTheStep() {
    Random random = new Random(20261127);
    for (int round = 0; round < 200; round++) {
      double capacity = 1.2 + 30 * random.nextDouble();
      List<Discharge.Phase> phases = new ArrayList<>();
      double until = 0;
      for (int phase = 0; phase < 4; phase++) {
        until += 0.1 * (1 + random.nextInt(120));
        phases.add(new Discharge.Phase(until, 2000 * random.nextDouble(), phase % 2 == 1));
      }
      phases.add(new Discharge.Phase(FOREVER, 50 + 500 * random.nextDouble(), false));
      List<Outage.Stretch> exact = new Discharge(capacity, 6, 10.5).run(phases);
      Outage.Moment end = exact.getLast().to();
      for (double step : new double[] {1 / 60.0, 1 / 600.0}) {
        double share = 1;
        double taken = 0;
        int steps = 0;
        while (true) {
          double now = (steps + 0.5) * step;
          double amperes =
              phases.stream()
                      .filter(phase -> now < phase.untilHours())
                      .findFirst()
                      .orElseThrow()
                      .milliamps()
                  / 1000;
          if (share <= 0 || DischargeCurve.volts(share, 6, amperes, capacity) < 10.5) {
            break;
          }
          // Peukert: H (C / (I H))^k hours, no more than C / I.
          double full = Math.min(20 * Math.pow(capacity / amperes / 20, 1.15), capacity / amperes);
          share -= step / full;
          taken += amperes * step;
          steps++;
        }
        assertThat(end.hours()).as("round " + round).isCloseTo(steps * step, within(2 * step));
        assertThat(end.ampereHours()).as("round " + round).isCloseTo(taken, within(4 * step));
      }
    }
  }

  /** No charge is lost: what is taken out is the integral of the loads. */
  @Test
  void takesOutTheIntegralOfTheLoads() {
    List<Outage.Stretch> stretches =
        run(
            7,
            new Discharge.Phase(5, 200, false),
            new Discharge.Phase(5.25, 900, true),
            new Discharge.Phase(FOREVER, 200, false));
    double sum =
        stretches.stream()
            .mapToDouble(
                each -> each.milliamps() / 1000 * (each.to().hours() - each.from().hours()))
            .sum();
    Outage.Moment end = stretches.getLast().to();
    assertThat(sum).isCloseTo(end.ampereHours(), within(1e-9));
    assertThat(end.ampereHours())
        .isCloseTo(0.2 * 5 + 0.9 * 0.25 + 0.2 * (end.hours() - 5.25), within(1e-9));
    for (int index = 1; index < stretches.size(); index++) {
      Outage.Moment before = stretches.get(index - 1).to();
      Outage.Moment after = stretches.get(index).from();
      assertThat(after.hours()).isEqualTo(before.hours());
      assertThat(after.share()).isEqualTo(before.share());
      assertThat(after.ampereHours()).isEqualTo(before.ampereHours());
    }
  }

  @Test
  void moreLoadNeverLastsLongerAndMoreCapacityNeverShorter() {
    Random random = new Random(42);
    for (int round = 0; round < 500; round++) {
      double capacity = 1 + 40 * random.nextDouble();
      double load = 20 + 3000 * random.nextDouble();
      double hours = end(capacity, load).hours();
      assertThat(end(capacity, load * 1.1).hours()).isLessThan(hours);
      assertThat(end(capacity * 1.1, load).hours()).isGreaterThan(hours);
      assertThat(hours)
          .isLessThanOrEqualTo(Peukert.carefulHours(capacity, load / 1000, 1.15) + 1e-9);
    }
  }

  @Test
  void aVoltageThatBeginsBelowALimitFellAtOnceAndNotBefore() {
    Outage.Moment from = new Outage.Moment(1, 0, 1, 12);
    Outage.Moment to = new Outage.Moment(2, 1, 0.5, 11);
    assertThat(Discharge.fallsBelow(from, to, 12.2)).hasValue(1);
    assertThat(Discharge.fallsBelow(from, to, 11.75)).hasValue(1.25);
    assertThat(Discharge.fallsBelow(from, to, 11)).isEmpty();
  }
}
