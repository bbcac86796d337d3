package keenward.core.dialogue.lint;

/** How bad a finding of the linter is. */
public enum LintSeverity {
  /** No order may be made from the description. */
  ERROR("error"),
  /** The description works, but probably does not say what was meant. */
  WARNING("warning"),
  /** Something that the panel cannot do, to know about. */
  NOTE("note");

  private final String word;

  LintSeverity(String word) {
    this.word = word;
  }

  /** The word for people and files. */
  public String word() {
    return word;
  }
}
