package keenward.core.plan;

/** How a partition is armed. */
public enum ArmingMode implements Worded {
  /** Everybody has left. */
  AWAY("away"),
  /** People are at home; inside zones are off. */
  STAY("stay"),
  /** People are asleep; as stay, with the zones that say so. */
  NIGHT("night");

  private final String word;

  ArmingMode(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
