package keenward.core.rules;

/** Whether a rule is in force. A code is retired, never used again for something else. */
public enum RuleStatus {
  /** In force. */
  IN_FORCE("in force"),
  /** Kept for its code only; it reports nothing. */
  RETIRED("retired");

  private final String word;

  RuleStatus(String word) {
    this.word = word;
  }

  /** The word in print and in JSON. */
  public String word() {
    return word;
  }
}
