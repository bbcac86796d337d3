package keenward.core.electrical;

/**
 * A change that lifts the voltage at a device.
 *
 * @param words what to do
 * @param volts voltage at the device then, in the state that is judged
 */
public record Remedy(String words, double volts) {

  /** The change with its figure. */
  public String text() {
    return words + ": " + Figures.voltsReached(volts);
  }
}
