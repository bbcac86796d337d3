package keenward.core.plan;

/** The shape of what a detector sees. */
public enum CoveragePattern implements Worded {
  /** A fan from the detector. */
  FAN("fan"),
  /** A thin vertical curtain. */
  CURTAIN("curtain"),
  /** All round, from the ceiling. */
  CEILING("ceiling"),
  /** A distance in every direction, in line of sight. */
  SPHERE("sphere"),
  /** A line between two ends. */
  LINE("line");

  private final String word;

  CoveragePattern(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
