package keenward.core.electrical;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/**
 * How long the fitted battery takes to charge again from empty, beside what the strictest regime
 * allows.
 *
 * @param hours hours to reach the rule's share of the capacity; to full where no rule is held
 * @param curve how the charge comes back
 * @param rule the strictest rule of the regimes, where one is held
 */
public record Recharge(Explained hours, List<Point> curve, Optional<RechargeRule> rule) {
  /** What to print beside the curve. */
  public static final String CURVE_SOURCE =
      "full current to 80 %, then a current that dies away; common practice";

  private static final double FULL_CURRENT_SHARE = 0.8;
  private static final double[] SHARES = {
    0, 0.2, 0.4, 0.6, 0.8, 0.85, 0.9, 0.925, 0.95, 0.97, 0.98, 0.99
  };

  /**
   * A point of the curve.
   *
   * @param hours since the mains came back
   * @param share what is in the battery, 0 to 1
   */
  public record Point(double hours, double share) {}

  /** Copies the list. */
  public Recharge {
    curve = List.copyOf(curve);
  }

  /**
   * Hours from empty to a share below 1: with the full current to 80 %, then with one that falls in
   * step with what is missing.
   */
  static double hoursTo(double share, double ampereHours, double amperes) {
    double evenly = Charger.hours(ampereHours * Math.min(share, FULL_CURRENT_SHARE), amperes);
    if (share <= FULL_CURRENT_SHARE) {
      return evenly;
    }
    double missing = 1 - FULL_CURRENT_SHARE;
    return evenly + Charger.hours(ampereHours * missing, amperes) * Math.log(missing / (1 - share));
  }

  /** When 80, 90, 95 and 99 % are back, in words. */
  public String curveWords() {
    return curve.stream()
        .filter(point ->
            point.share() == FULL_CURRENT_SHARE
                || point.share() == 0.9
                || point.share() == 0.95
                || point.share() == 0.99)
        .map(point ->
            Figures.text(point.share() * 100, "%")
                + " % after "
                + hours.certainty().words()
                + Figures.text(point.hours(), "h")
                + " h")
        .collect(Collectors.joining(", "));
  }

  private static List<Point> curve(double ampereHours, double amperes) {
    return DoubleStream.of(SHARES)
        .mapToObj(share -> new Point(hoursTo(share, ampereHours, amperes), share))
        .toList();
  }

  /**
   * Computes the recharge time.
   *
   * @param ampereHours capacity fitted
   * @param chargeMilliamps greatest charging current, more than 0
   * @param certainty at least, while more load may take from the charging current
   * @param duties duties whose rules are compared
   */
  public static Recharge of(
      double ampereHours, double chargeMilliamps, Certainty certainty, List<BatteryDuty> duties) {
    Optional<RechargeRule> strictest = strictestRule(duties);
    double share = strictest.map(RechargeRule::share).orElse(1.0);
    Explained hours =
        new Explained(
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
            certainty,
            Charger.SOURCE
                + strictest
                    .map(rule -> "; allowed: " + rule.words() + ", " + rule.source())
                    .orElse(""));
    return new Recharge(hours, curve(ampereHours, chargeMilliamps / 1000), strictest);
  }

  /** The rule that asks for the greatest charging current. */
  static Optional<RechargeRule> strictestRule(List<BatteryDuty> duties) {
    return duties.stream()
        .flatMap(duty -> duty.recharge().stream())
        .max(Comparator.comparingDouble(rule -> rule.share() / rule.hours()));
  }
}
