package keenward.core.plan;

/** A way by which signals reach the monitoring centre. */
public enum SignalPath implements Worded {
  /** Fixed internet connection. */
  IP("ip"),
  /** Mobile network. */
  MOBILE("mobile"),
  /** Telephone line. */
  TELEPHONE("telephone"),
  /** Private radio network. */
  PRIVATE_RADIO("private-radio");

  private final String word;

  SignalPath(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
