package keenward.core.plan;

/** How a device reaches the panel. */
public enum Wiring implements Worded {
  /** Loop of a zone input, or two wires of an output. */
  WIRED("wired"),
  /** Radio; the device has its own cell. */
  RADIO("radio"),
  /** Data bus of the panel. */
  BUS("bus");

  private final String word;

  Wiring(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
