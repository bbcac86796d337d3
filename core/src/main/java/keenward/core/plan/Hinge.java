package keenward.core.plan;

/** The side of a leaf's hinge. */
public enum Hinge implements Worded {
  /** Left. */
  LEFT("left"),
  /** Right. */
  RIGHT("right");

  private final String word;

  Hinge(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
