package keenward.core.electrical.outage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.electrical.BatteryDuty;
import keenward.core.electrical.Explained;
import keenward.core.electrical.Figures;

/**
 * A mains failure that lasts until the battery of a supply is empty: at rest as long as the
 * strictest regime wants, then in alarm, then at rest again. Without a regime that sets hours, at
 * rest throughout.
 *
 * @param supply name of the supply
 * @param duty what the strictest regime wants
 * @param available capacity that is left of the fitted batteries in the cold and at their end of
 *     life, in ampere-hours
 * @param cutOff voltage at which the battery is switched off
 * @param stretches the discharge; within a stretch load is steady, and charge and voltage fall
 *     evenly
 * @param events what happens, in order
 */
public record Outage(
    String supply,
    Optional<BatteryDuty> duty,
    Explained available,
    Explained cutOff,
    List<Stretch> stretches,
    List<OutageEvent> events) {

  /** The most rows that {@link #hourly} gives. */
  public static final int MOST_ROWS = 26;

  private static final int[] STEPS = {1, 2, 3, 4, 6, 12, 24, 48, 120, 240, 480};

  /** Copies the lists. */
  public Outage {
    stretches = List.copyOf(stretches);
    events = List.copyOf(events);
  }

  /**
   * Part of a discharge.
   *
   * @param from its beginning
   * @param to its end
   * @param milliamps the load
   */
  public record Stretch(Moment from, Moment to, double milliamps) {}

  /**
   * The battery at a moment.
   *
   * @param hours since the mains failed
   * @param ampereHours charge taken out so far
   * @param share what is left of the capacity, 0 to 1
   * @param volts of the battery
   */
  public record Moment(double hours, double ampereHours, double share, double volts) {

    /** What is left in print, rounded down. */
    public String percentInPrint() {
      return Figures.text(Math.floor(share * 100 + 1e-9)) + " %";
    }

    /** The voltage in print, rounded down: print never shows what is not reached. */
    public String voltsInPrint() {
      return Figures.text(Math.floor(volts * 100 + 1e-9) / 100) + " V";
    }

    /** The charge taken out in print. */
    public String ampereHoursInPrint() {
      return Figures.text(Math.round(ampereHours * 100) / 100.0) + " Ah";
    }

    Moment towards(Moment to, double hours) {
      double part = to.hours == this.hours ? 0 : (hours - this.hours) / (to.hours - this.hours);
      return new Moment(
          hours,
          ampereHours + part * (to.ampereHours - ampereHours),
          share + part * (to.share - share),
          volts + part * (to.volts - volts));
    }
  }

  /** Hours until the battery ends. */
  public double hours() {
    return last().hours();
  }

  /** The battery at its end. */
  public Moment last() {
    return stretches.getLast().to();
  }

  /** Hours that the strictest regime wants; 0 without one. */
  public double wantedHours() {
    return duty.map(each -> each.standbyHours() + each.alarmMinutes() / 60).orElse(0.0);
  }

  /** The first event of a kind. */
  public Optional<OutageEvent> first(OutageEvent.Kind kind) {
    return events.stream().filter(event -> event.kind() == kind).findFirst();
  }

  /** The battery at a time; at a change of load, just after it. */
  public Moment at(double hours) {
    Stretch found = stretches.getFirst();
    for (Stretch stretch : stretches) {
      if (stretch.from().hours() <= hours) {
        found = stretch;
      }
    }
    return found.from().towards(found.to(), Math.min(hours, found.to().hours()));
  }

  /** The battery each hour, or every few hours where it lasts long, and at its end. */
  public List<Moment> hourly() {
    int step = STEPS[STEPS.length - 1];
    for (int index = STEPS.length - 1; index >= 0; index--) {
      if (hours() / STEPS[index] <= MOST_ROWS - 2) {
        step = STEPS[index];
      }
    }
    List<Moment> rows = new ArrayList<>();
    for (int hour = 0; hour < hours(); hour += step) {
      rows.add(at(hour));
    }
    rows.add(last());
    return List.copyOf(rows);
  }
}
