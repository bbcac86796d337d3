package keenward.core.reporting;

/** What the last three digits of a DC-05 event name. */
public enum Subject {
  /** A zone number; 000 when none. */
  ZONE("zone"),
  /** A user number; 000 when none. */
  USER("user");

  private final String word;

  Subject(String word) {
    this.word = word;
  }

  /** The word used in print. */
  public String word() {
    return word;
  }
}
