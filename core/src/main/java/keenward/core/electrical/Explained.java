package keenward.core.electrical;

/**
 * One line of a sum that a surveyor can follow: what is computed, the formula with its numbers, the
 * result, the source.
 *
 * @param name what is computed
 * @param working formula with the numbers that went in; empty when the figure is taken as it is
 * @param value result in {@code unit}
 * @param unit unit of the result; empty for a factor
 * @param certainty whether something unknown was left out
 * @param source published source of the method, or where in the plan the figure stands
 */
public record Explained(
    String name, String working, double value, String unit, Certainty certainty, String source) {

  /** A line about which everything is known. */
  public static Explained known(
      String name, String working, double value, String unit, String source) {
    return new Explained(name, working, value, unit, Certainty.KNOWN, source);
  }

  /** The result in words, rounded for print; the value itself is not. */
  public String result() {
    return certainty.words() + Figures.text(value, unit) + (unit.isEmpty() ? "" : " " + unit);
  }

  /** The whole line. */
  public String text() {
    return name
        + ": "
        + (working.isEmpty() ? "" : working + " = ")
        + result()
        + (source.isEmpty() ? "" : " (" + source + ")");
  }
}
