package keenward.core.plan;

/** How fast a person walks. */
public enum Pace implements Worded {
  /** Slow: older people, loads, children. */
  SLOW("slow"),
  /** Usual. */
  USUAL("usual"),
  /** Brisk. */
  BRISK("brisk");

  private final String word;

  Pace(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
