package keenward.core.plan;

/** The unit of a floor's plain coordinates. */
public enum DrawingUnit implements Worded {
  /** Metres. */
  METRES("m"),
  /** Feet. */
  FEET("ft");

  private final String word;

  DrawingUnit(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
