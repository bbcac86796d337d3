package keenward.core.plan;

/** How a wired zone is supervised. */
public enum LoopWiring implements Worded {
  /** No resistor: closed or open, nothing else. */
  NONE("none", 0),
  /** One end-of-line resistor. */
  SINGLE_RESISTOR("single resistor", 1),
  /** One resistor for rest, one for alarm: tells alarm from tamper. */
  DOUBLE_RESISTOR("double resistor", 2),
  /** As double, with a third state for masking or fault. */
  TRIPLE_RESISTOR("triple resistor", 3);

  private final String word;
  private final int resistors;

  LoopWiring(String word, int resistors) {
    this.word = word;
    this.resistors = resistors;
  }

  /** How many resistors it takes. */
  public int resistors() {
    return resistors;
  }

  @Override
  public String word() {
    return word;
  }
}
