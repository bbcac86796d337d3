package keenward.core.electrical;

import keenward.core.plan.Fact;
import keenward.core.plan.PlanPath;
import keenward.core.quantities.Current;

/**
 * What one thing draws from a supply.
 *
 * @param name name of the device, or of the supply's own board
 * @param path its place in the plan
 * @param standby current at rest
 * @param alarm current in alarm, the current at rest included
 * @param standbySource where the current at rest is stated
 * @param alarmSource where the current in alarm is stated
 */
public record LoadLine(
    String name,
    PlanPath path,
    Fact<Current> standby,
    Fact<Current> alarm,
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

  /** Whether the current at rest is stated. */
  public boolean isStandbyKnown() {
    return standby.isGiven();
  }

  /** Whether the current in alarm is stated. */
  public boolean isAlarmKnown() {
    return alarm.isGiven();
  }
}
