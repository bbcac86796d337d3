package keenward.core.electrical;

import keenward.core.plan.Fact;
import keenward.core.plan.PlanPath;
import keenward.core.quantities.Current;
import keenward.core.quantities.Span;

/**
 * What one thing draws from a supply.
 *
 * @param name name of the device, or of the supply's own board
 * @param path its place in the plan
 * @param standby current at rest
 * @param alarm current in alarm, the current at rest included
 * @param alarmTime how long it draws its current in alarm; all of the alarm where nothing is said
 * @param alarmTimeSource where that stands
 * @param standbySource where the current at rest is stated
 * @param alarmSource where the current in alarm is stated
 */
public record LoadLine(
    String name,
    PlanPath path,
    Fact<Current> standby,
    Fact<Current> alarm,
    Fact<Span> alarmTime,
    String alarmTimeSource,
    String standbySource,
    String alarmSource) {

  /** Milliamperes at rest; nothing when unknown. */
  public double standbyMilliamps() {
    return standby.map(Current::milliamps).orElse(0.0);
  }

  /** Milliamperes in alarm; when unknown, those at rest, which it cannot fall below. */
  public double alarmMilliamps() {
    return alarm.map(Current::milliamps).orElse(standbyMilliamps());
  }

  /** Minutes of an alarm during which it draws its current in alarm. */
  public double alarmMinutes(double wholeAlarm) {
    return alarmTime.map(time -> Math.min(wholeAlarm, time.seconds() / 60)).orElse(wholeAlarm);
  }

  /** Whether the current at rest is stated. */
  public boolean isStandbyKnown() {
    return standby.isGiven();
  }

  /** Whether the current in alarm is stated. */
  public boolean isAlarmKnown() {
    return alarm.isGiven();
  }
}
