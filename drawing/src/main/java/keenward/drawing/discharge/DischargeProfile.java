package keenward.drawing.discharge;

import java.util.List;

/**
 * What the drawing of a discharge shows.
 *
 * @param supply name of the supply
 * @param points the voltage from the mains failure on; at a change of load two of one time
 * @param cutOffVolts voltage at which the battery is switched off
 * @param wantedHours how long the strictest regime wants it to last; 0 without one
 * @param marks what happens on the way, in order
 */
public record DischargeProfile(
    String supply, List<Point> points, double cutOffVolts, double wantedHours, List<Mark> marks) {

  /** Copies the lists. */
  public DischargeProfile {
    points = List.copyOf(points);
    marks = List.copyOf(marks);
  }

  /**
   * The battery at a moment.
   *
   * @param hours since the mains failed
   * @param volts of the battery
   */
  public record Point(double hours, double volts) {}

  /**
   * Something that happens.
   *
   * @param hours since the mains failed
   * @param volts of the battery then
   * @param what in words, with the time
   * @param isEarly whether it is a failure before the wanted time is over
   */
  public record Mark(double hours, double volts, String what, boolean isEarly) {}
}
