package keenward.core.electrical;

import keenward.core.plan.Fact;

/**
 * By how much a battery is chosen larger for its old age. A regime's own margin and the ageing
 * factor stand for the same loss, so the larger is used and never the product; the text shows both.
 */
public final class AgeAllowance {
  /** End of life at 80 % of the capacity: IEEE Std 485, from memory. */
  public static final double USUAL = 1.25;

  private AgeAllowance() {}

  /** The factor where no regime sets a margin. */
  public static Explained of(Fact<Double> stated) {
    return Explained.known("Age allowance", "", stated.orElse(USUAL), "", source(stated));
  }

  /**
   * The factor with its explanation.
   *
   * @param stated ageing factor that the plan states for the supply
   * @param duty the regime's duty
   */
  public static Explained of(Fact<Double> stated, BatteryDuty duty) {
    double margin = duty.ageAllowance();
    if (!stated.isGiven() && margin > 1) {
      return Explained.known("Age allowance", "", margin, "", duty.source());
    }
    double ageing = stated.orElse(USUAL);
    if (margin <= 1) {
      return of(stated);
    }
    return Explained.known(
        "Age allowance",
        "larger of ageing "
            + Figures.text(ageing)
            + " and the regime's margin "
            + Figures.text(margin),
        Math.max(ageing, margin),
        "",
        source(stated) + "; " + duty.source());
  }

  private static String source(Fact<Double> stated) {
    return stated.isGiven()
        ? "ageing factor stated in the plan"
        : "IEEE Std 485, end of life at 80 % (from memory); an approximation for small sealed batteries";
  }
}
