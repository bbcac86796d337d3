package keenward.core.electrical;

/**
 * How fast a battery has to be charged again.
 *
 * @param share share of its capacity to be reached, above 0 to 1
 * @param hours within how long
 * @param source where the rule stands
 */
public record RechargeRule(double share, double hours, String source) {

  /** The rule in words, such as {@code 80 % within 72 h}. */
  public String words() {
    return Figures.text(share * 100) + " % within " + Figures.text(hours) + " h";
  }
}
