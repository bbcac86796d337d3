package keenward.core.rehearsal;

/** A number that the whole system goes by. Times are held in tenths of a second. */
public enum TimingSetting {
  EXIT_TIME("exit time", 600, "CP-01 4.2.2.1 (default from memory)", "time to leave after arming"),
  SOUNDER_TIME(
      "sounder time", 3000, "common practice, no source", "how long the burglary sounder runs"),
  FIRE_SOUNDER_TIME(
      "fire sounder time",
      0,
      "common practice, no source",
      "how long the fire sounder runs; 0 means until it is silenced"),
  ABORT_WINDOW(
      "abort window",
      300,
      "CP-01 abort window (default from memory)",
      "how long a burglary report is held back so that disarming can stop it; 0 means not at all"),
  CANCEL_WINDOW(
      "cancel window",
      3000,
      "CP-01 cancel window (from memory)",
      "how long after a sent alarm a disarming sends a cancel"),
  RECENT_CLOSING_WINDOW(
      "recent closing window",
      1200,
      "common practice, no source",
      "an alarm this soon after the exit time is reported as recent closing; 0 means never"),
  SWINGER_RESET(
      "swinger reset",
      1_728_000,
      "CP-01 swinger exclusions and reset (from memory)",
      "a zone that was shut out comes back after this long without an alarm in its partition"),
  MAINS_REPORT_DELAY(
      "mains failure report",
      36_000,
      "common practice, no source",
      "how long mains may be absent before it is reported"),
  BATTERY_TEST_INTERVAL(
      "battery test interval",
      864_000,
      "common practice, no source",
      "how often a battery that was found low is tested"),
  RADIO_SUPERVISION(
      "radio supervision",
      864_000,
      "common practice, no source",
      "how long a radio device may be silent"),
  WRONG_CODE_LIMIT(
      "wrong code limit",
      6,
      "common practice, no source",
      "wrong codes in a row after which a keypad stops listening; a count, not a time; 0 means never"),
  KEYPAD_LOCK_OUT(
      "keypad lock-out", 900, "common practice, no source", "how long a keypad stops listening"),
  FIRE_VERIFICATION_WINDOW(
      "fire verification window",
      1200,
      "common practice, no source",
      "how long a reset smoke detector is waited for"),
  GAS_REPEAT(
      "carbon monoxide repeat",
      2400,
      "common practice, no source",
      "a silenced carbon monoxide alarm sounds again after this long while the gas stays"),
  START_UP_TIME(
      "start-up time",
      600,
      "CP-01-200x draft 4.4.3",
      "how long inputs are ignored after a restart"),
  AUTOMATIC_ARMING_WARNING(
      "automatic arming warning",
      6000,
      "common practice, no source",
      "how long before arming by itself the system warns");

  private final String word;
  private final int standard;
  private final String source;
  private final String meaning;

  TimingSetting(String word, int standard, String source, String meaning) {
    this.word = word;
    this.standard = standard;
    this.source = source;
    this.meaning = meaning;
  }

  /** Its name in plain words. */
  public String word() {
    return word;
  }

  /** What it means. */
  public String meaning() {
    return meaning;
  }

  /** Its value where nothing else is said: tenths of a second, or a count where it says so. */
  public int standard() {
    return standard;
  }

  /** Where the standard value comes from. */
  public String source() {
    return source;
  }

  /** Whether 0 has a meaning. */
  boolean mayBeZero() {
    return switch (this) {
      case EXIT_TIME,
          FIRE_SOUNDER_TIME,
          ABORT_WINDOW,
          CANCEL_WINDOW,
          RECENT_CLOSING_WINDOW,
          MAINS_REPORT_DELAY,
          WRONG_CODE_LIMIT,
          START_UP_TIME,
          AUTOMATIC_ARMING_WARNING ->
          true;
      default -> false;
    };
  }

  /** Its place in an array; never stored beyond the running program. */
  @SuppressWarnings("EnumOrdinal")
  int slot() {
    return ordinal();
  }
}
