package keenward.core.reporting;

/** What qualifiers 1 and 3 mean for an event code; 6 is always a repeated status report. */
public enum QualifierUse {
  /** 1 a new event, 3 its restore. */
  EVENT("event", "new event", "restore"),
  /** 1 opening (disarming), 3 closing (arming). */
  OPENING("opening", "opening (disarming)", "closing (arming)"),
  /** 1 set (bypassed, disabled), 3 removed. */
  DISABLE("disable", "bypassed or disabled", "back in use"),
  /** Only 1 is usual; nothing restores. */
  SINGLE("single", "event", "not usual"),
  /** Only 3 is usual, since the report is a kind of closing; accept 1 too (from memory). */
  CLOSING("closing", "not usual", "closing (arming)");

  private final String word;
  private final String newEvent;
  private final String restore;

  QualifierUse(String word, String newEvent, String restore) {
    this.word = word;
    this.newEvent = newEvent;
    this.restore = restore;
  }

  /** The word in the event table. */
  String word() {
    return word;
  }

  /** Meaning of a qualifier under this use. */
  public String meaning(Qualifier qualifier) {
    return switch (qualifier) {
      case NEW_EVENT -> newEvent;
      case RESTORE -> restore;
      case STILL_PRESENT -> "still present";
    };
  }
}
