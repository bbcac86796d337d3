package keenward.core.electrical;

import java.util.Optional;

/**
 * How long a regime wants a battery to carry the system.
 *
 * @param regime the regime as the plan names it
 * @param standbyHours hours at rest
 * @param alarmMinutes minutes in alarm at the end
 * @param ageAllowance factor on the capacity that the regime prescribes; 1 when it prescribes none
 * @param recharge how fast the battery has to be charged again, where a figure is held
 * @param source where hours, minutes and allowance stand
 */
public record BatteryDuty(
    String regime,
    double standbyHours,
    double alarmMinutes,
    double ageAllowance,
    Optional<RechargeRule> recharge,
    String source) {

  /** The duty in words, such as {@code 24 h at rest, then 4 min in alarm}. */
  public String words() {
    return Figures.text(standbyHours)
        + " h at rest, then "
        + Figures.text(alarmMinutes)
        + " min in alarm";
  }
}
