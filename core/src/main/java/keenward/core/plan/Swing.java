package keenward.core.plan;

/** The side to which a leaf opens. */
public enum Swing implements Worded {
  /** Into the first named room. */
  IN("in"),
  /** Out of the first named room. */
  OUT("out");

  private final String word;

  Swing(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
