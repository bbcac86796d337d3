package keenward.core.electrical.outage;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import keenward.core.electrical.Peukert;

/**
 * Empties a battery by steady loads one after the other. With a steady load the share that is left
 * falls evenly, so every moment is solved for, not stepped to.
 *
 * @param ampereHours capacity at the 20-hour rate, more than 0
 * @param cells number of cells in series
 * @param cutOffVolts voltage at which it is switched off
 */
record Discharge(double ampereHours, int cells, double cutOffVolts) {

  /** Hours after which nobody reckons on: self-discharge has emptied the battery by then. */
  static final double YEAR_HOURS = 8760;

  /**
   * A steady load.
   *
   * @param untilHours when it ends, since the mains failed
   * @param milliamps how much
   * @param isAlarm whether devices are in alarm
   */
  record Phase(double untilHours, double milliamps, boolean isAlarm) {}

  /** The stretches until the battery is switched off, is empty, or a year is over. */
  List<Outage.Stretch> run(List<Phase> phases) {
    List<Outage.Stretch> stretches = new ArrayList<>();
    double hours = 0;
    double share = 1;
    double taken = 0;
    for (Phase phase : phases) {
      double until = Math.min(phase.untilHours(), YEAR_HOURS);
      double amperes = phase.milliamps() / 1000;
      double lost =
          amperes > 0 ? 1 / Peukert.carefulHours(ampereHours, amperes, Peukert.USUAL_EXPONENT) : 0;
      while (hours < until) {
        double bend = DischargeCurve.bendBelow(share);
        double toBend = lost > 0 ? (share - bend) / lost : YEAR_HOURS;
        boolean reachesBend = hours + toBend <= until;
        double end = reachesBend ? hours + toBend : until;
        double left = reachesBend ? bend : share - lost * (until - hours);
        Outage.Moment from = new Outage.Moment(hours, taken, share, volts(share, amperes));
        Outage.Moment to =
            new Outage.Moment(end, taken + amperes * (end - hours), left, volts(left, amperes));
        OptionalDouble off = fallsBelow(from, to, cutOffVolts);
        if (off.isPresent()) {
          stretches.add(
              new Outage.Stretch(from, from.towards(to, off.getAsDouble()), phase.milliamps()));
          return stretches;
        }
        stretches.add(new Outage.Stretch(from, to, phase.milliamps()));
        hours = end;
        share = left;
        taken = to.ampereHours();
        if (share <= 0) {
          return stretches;
        }
      }
    }
    return stretches;
  }

  private double volts(double share, double amperes) {
    return DischargeCurve.volts(share, cells, amperes, ampereHours);
  }

  /** When the voltage falls below a limit between two moments; at once if it begins below. */
  static OptionalDouble fallsBelow(Outage.Moment from, Outage.Moment to, double volts) {
    if (from.volts() < volts) {
      return OptionalDouble.of(from.hours());
    }
    if (to.volts() >= volts) {
      return OptionalDouble.empty();
    }
    double part = (from.volts() - volts) / (from.volts() - to.volts());
    return OptionalDouble.of(from.hours() + part * (to.hours() - from.hours()));
  }
}
