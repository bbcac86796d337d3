package keenward.core.plan;

/** The state of a detector's contact at rest. */
public enum ContactForm implements Worded {
  /** Closed at rest; violation opens it. */
  NORMALLY_CLOSED("normally-closed"),
  /** Open at rest; violation closes it. */
  NORMALLY_OPEN("normally-open");

  private final String word;

  ContactForm(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
