package keenward.core.rehearsal;

/** What keypads give to be heard. */
public enum Beep {
  /** Exit time is running. */
  EXIT("exit tone", true),
  /** Entry time is running. */
  ENTRY("entry tone", true),
  /** A door was opened while disarmed. */
  CHIME("chime", false),
  /** Something needs looking at. */
  TROUBLE("trouble beep", false),
  /** The system is about to arm by itself. */
  ARMING_WARNING("arming warning", true);

  private final String word;
  private final boolean lasting;

  Beep(String word, boolean lasting) {
    this.word = word;
    this.lasting = lasting;
  }

  /** Its name in plain words. */
  public String word() {
    return word;
  }

  /** Whether it goes on until it is ended; otherwise it is given once. */
  public boolean isLasting() {
    return lasting;
  }
}
