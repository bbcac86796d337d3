package keenward.core.plan;

/** How a wired zone is supervised. */
public enum LoopWiring implements Worded {
  /** No resistor: closed or open, nothing else. */
  NONE("none"),
  /** One end-of-line resistor. */
  SINGLE_RESISTOR("single resistor"),
  /** One resistor for rest, one for alarm: tells alarm from tamper. */
  DOUBLE_RESISTOR("double resistor"),
  /** As double, with a third state for masking or fault. */
  TRIPLE_RESISTOR("triple resistor");

  private final String word;

  LoopWiring(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
