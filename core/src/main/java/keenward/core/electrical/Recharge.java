package keenward.core.electrical;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * How long the fitted battery takes to charge again from empty, beside what the strictest regime
 * allows.
 *
 * @param hours hours to reach the rule's share of the capacity; to full where no rule is held
 * @param rule the strictest rule of the regimes, where one is held
 */
public record Recharge(Explained hours, Optional<RechargeRule> rule) {

  /**
   * Computes the recharge time.
   *
   * @param ampereHours capacity fitted
   * @param chargeMilliamps greatest charging current, more than 0
   * @param duties duties whose rules are compared
   */
  public static Recharge of(double ampereHours, double chargeMilliamps, List<BatteryDuty> duties) {
    Optional<RechargeRule> strictest = strictestRule(duties);
    double share = strictest.map(RechargeRule::share).orElse(1.0);
    Explained hours =
        Explained.known(
            "Recharge to " + Figures.text(share * 100) + " %",
            Figures.text(Charger.CHARGE_RATIO)
                + " x "
                + Figures.text(ampereHours)
                + " Ah x "
                + Figures.text(share)
                + " / "
                + Figures.text(chargeMilliamps / 1000)
                + " A",
            Charger.hours(ampereHours * share, chargeMilliamps / 1000),
            "h",
            Charger.SOURCE
                + strictest
                    .map(rule -> "; allowed: " + rule.words() + ", " + rule.source())
                    .orElse(""));
    return new Recharge(hours, strictest);
  }

  /** The rule that asks for the greatest charging current. */
  static Optional<RechargeRule> strictestRule(List<BatteryDuty> duties) {
    return duties.stream()
        .flatMap(duty -> duty.recharge().stream())
        .max(Comparator.comparingDouble(rule -> rule.share() / rule.hours()));
  }
}
