package keenward.core.rehearsal;

/** A number that the whole system goes by. Times are held in tenths of a second. */
public enum TimingSetting {
  /** Time to leave after arming. */
  EXIT_TIME("exit time", 600, "CP-01 4.2.2.1 (default from memory)"),
  /** How long the burglary sounder runs. */
  SOUNDER_TIME("sounder time", 3000, "common practice, no source"),
  /** How long the fire sounder runs; 0 means until it is silenced. */
  FIRE_SOUNDER_TIME("fire sounder time", 0, "common practice, no source"),
  /** How long a burglary report is held back so that disarming can stop it; 0 means not at all. */
  ABORT_WINDOW("abort window", 300, "CP-01 abort window (default from memory)"),
  /** How long after a sent alarm a disarming sends a cancel. */
  CANCEL_WINDOW("cancel window", 3000, "CP-01 cancel window (from memory)"),
  /** An alarm this soon after the exit time is reported as recent closing; 0 means never. */
  RECENT_CLOSING_WINDOW("recent closing window", 1200, "common practice, no source"),
  /** A zone that was shut out comes back after this long without an alarm in its partition. */
  SWINGER_RESET("swinger reset", 1_728_000, "CP-01 swinger exclusions and reset (from memory)"),
  /** How long mains may be absent before it is reported. */
  MAINS_REPORT_DELAY("mains failure report", 36_000, "common practice, no source"),
  /** How often a battery that was found low is tested. */
  BATTERY_TEST_INTERVAL("battery test interval", 864_000, "common practice, no source"),
  /** How long a radio device may be silent. */
  RADIO_SUPERVISION("radio supervision", 864_000, "common practice, no source"),
  /** Wrong codes in a row after which a keypad stops listening; a count, not a time; 0 means never. */
  WRONG_CODE_LIMIT("wrong code limit", 6, "common practice, no source"),
  /** How long a keypad stops listening. */
  KEYPAD_LOCK_OUT("keypad lock-out", 900, "common practice, no source"),
  /** How long a reset smoke detector is waited for. */
  FIRE_VERIFICATION_WINDOW("fire verification window", 1200, "common practice, no source"),
  /** A silenced carbon monoxide alarm sounds again after this long while the gas stays. */
  GAS_REPEAT("carbon monoxide repeat", 2400, "common practice, no source"),
  /** How long inputs are ignored after a restart. */
  START_UP_TIME("start-up time", 600, "CP-01-200x draft 4.4.3"),
  /** How long before arming by itself the system warns. */
  AUTOMATIC_ARMING_WARNING("automatic arming warning", 6000, "common practice, no source");

  private final String word;
  private final int standard;
  private final String source;

  TimingSetting(String word, int standard, String source) {
    this.word = word;
    this.standard = standard;
    this.source = source;
  }

  /** Its name in plain words. */
  public String word() {
    return word;
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
      case EXIT_TIME, FIRE_SOUNDER_TIME, ABORT_WINDOW, CANCEL_WINDOW, RECENT_CLOSING_WINDOW,
          MAINS_REPORT_DELAY, WRONG_CODE_LIMIT, START_UP_TIME, AUTOMATIC_ARMING_WARNING ->
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
