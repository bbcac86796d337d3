package keenward.core.electrical;

import java.util.List;

/**
 * The battery that one duty asks for: (standby current x hours + alarm current x hours) x
 * temperature factor x age allowance, with every factor on its own line.
 *
 * @param duty the duty
 * @param temperature the temperature factor used
 * @param age the age allowance used
 * @param charge charge taken out, in ampere-hours
 * @param needed capacity at the 20-hour rate, in ampere-hours
 */
public record BatteryNeed(
    BatteryDuty duty, Explained temperature, Explained age, Explained charge, Explained needed) {

  /**
   * A device that is back at rest before the alarm is over.
   *
   * @param name its name
   * @param minutes how long it draws its current in alarm
   * @param savedMilliamps by how much it draws less then
   */
  public record EarlyRest(String name, double minutes, double savedMilliamps) {}

  /**
   * Computes the need with every device in alarm to the end.
   *
   * @param standby current at rest, in milliamperes
   * @param alarm current in alarm, in milliamperes, the current at rest included
   * @param temperature factor for the cold; its certainty tells whether the temperature is known
   * @param age factor for age
   */
  public static BatteryNeed of(
      BatteryDuty duty, Explained standby, Explained alarm, Explained temperature, Explained age) {
    return of(duty, standby, alarm, List.of(), temperature, age);
  }

  /**
   * Computes the need.
   *
   * @param early devices that are back at rest before the alarm is over
   */
  public static BatteryNeed of(
      BatteryDuty duty,
      Explained standby,
      Explained alarm,
      List<EarlyRest> early,
      Explained temperature,
      Explained age) {
    double saved = 0;
    StringBuilder words = new StringBuilder();
    for (EarlyRest each : early) {
      double minutes = duty.alarmMinutes() - each.minutes();
      saved += each.savedMilliamps() / 1000 * minutes / 60;
      words
          .append(" - ")
          .append(Figures.text(each.savedMilliamps() / 1000))
          .append(" A x ")
          .append(Figures.text(minutes))
          .append("/60 h (")
          .append(each.name())
          .append(')');
    }
    double ampereHours =
        standby.value() / 1000 * duty.standbyHours()
            + alarm.value() / 1000 * duty.alarmMinutes() / 60
            - saved;
    Certainty loads = standby.certainty().and(alarm.certainty());
    Explained charge =
        new Explained(
            "Charge taken out",
            Figures.text(standby.value() / 1000)
                + " A x "
                + Figures.text(duty.standbyHours())
                + " h + "
                + Figures.text(alarm.value() / 1000)
                + " A x "
                + Figures.text(duty.alarmMinutes())
                + "/60 h"
                + words,
            ampereHours,
            "Ah",
            loads,
            duty.source());
    Explained needed =
        new Explained(
            "Capacity needed",
            Figures.text(ampereHours)
                + " Ah x temperature "
                + Figures.text(temperature.value())
                + " x age "
                + Figures.text(age.value()),
            ampereHours * temperature.value() * age.value(),
            "Ah",
            loads.and(temperature.certainty()),
            "capacity at the 20-hour rate");
    return new BatteryNeed(duty, temperature, age, charge, needed);
  }

  /** Every line, in the order of the sum. */
  public List<Explained> lines() {
    return List.of(charge, temperature, age, needed);
  }
}
