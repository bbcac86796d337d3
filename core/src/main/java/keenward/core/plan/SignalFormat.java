package keenward.core.plan;

/** The event vocabulary of the monitoring centre. */
public enum SignalFormat implements Worded {
  /** Number codes of DC-05. */
  DC_05("dc-05"),
  /** Letter codes of DC-03. */
  DC_03("dc-03");

  private final String word;

  SignalFormat(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
