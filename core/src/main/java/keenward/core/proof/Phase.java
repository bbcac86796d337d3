package keenward.core.proof;

/** When a test belongs, in the order of a visit. */
public enum Phase {
  /** Before anything is touched. */
  BEFORE("Before the tests"),
  /** System disarmed: what is live day and night. */
  DISARMED("Disarmed"),
  /** System armed: zones that guard only then. */
  ARMED("Armed"),
  /** Times, measured. */
  TIMES("Times"),
  /** Supplies, radio, paths and codes. */
  SUPERVISED("Supervised items"),
  /** After everything. */
  AFTER("After the tests");

  private final String words;

  Phase(String words) {
    this.words = words;
  }

  /** Heading in print. */
  public String words() {
    return words;
  }
}
