package keenward.core.rules;

/** How much a finding matters, worst first. */
public enum Severity {
  /** The system does not do its work, or harms somebody: it has to be put right. */
  ERROR("error"),
  /** It may be right, and often is not: somebody has to look. */
  WARNING("warning"),
  /** It could be better. */
  ADVICE("advice");

  private final String word;

  Severity(String word) {
    this.word = word;
  }

  /** The word in print and in JSON. */
  public String word() {
    return word;
  }
}
