package keenward.core.plan;

/**
 * A system-wide setting of the panel, with the program's own default where neither plan, regime nor
 * panel description gives one.
 */
public enum Setting implements Worded {
  /** Entry delay; there may be several, by number. */
  ENTRY_DELAY("entry delays", Kind.SPAN, 30_000),
  /** Exit time. */
  EXIT_TIME("exit time", Kind.SPAN, 60_000),
  /** How long sounders run. */
  SOUNDER_TIME("sounder time", Kind.SPAN, 300_000),
  /** How long a burglary signal is held back; 0 sends at once. */
  ABORT_WINDOW("abort window", Kind.SPAN, 0),
  /** How long after a sent alarm a disarming sends a cancel. */
  CANCEL_WINDOW("cancel window", Kind.SPAN, 300_000),
  /** How soon after arming an alarm is reported as recent closing. */
  RECENT_CLOSING_WINDOW("recent closing window", Kind.SPAN, 120_000),
  /** Alarms of one zone reported in one arming period; 0 reports all. */
  SWINGER_LIMIT("swinger limit", Kind.COUNT, 0),
  /** Whether re-opening the exit door restarts the exit time, once. */
  EXIT_RESTART("exit restart", Kind.FLAG, 0),
  /** Whether arming away without leaving arms stay. */
  AUTOMATIC_STAY("automatic stay", Kind.FLAG, 0),
  /** How long mains may be absent before it is reported. */
  MAINS_FAILURE_REPORT("mains failure report", Kind.SPAN, 3_600_000),
  /** How long a radio device may be silent. */
  RADIO_SUPERVISION("radio supervision", Kind.SPAN, 86_400_000),
  /** Wrong codes after which a keypad stops listening; 0 never. */
  LOCK_OUT_AFTER("keypad lock-out / after", Kind.COUNT, 0),
  /** How long a keypad stops listening. */
  LOCK_OUT_PERIOD("keypad lock-out / for", Kind.SPAN, 90_000);

  /** What the whole number that stands for the value means. */
  public enum Kind {
    /** Milliseconds. */
    SPAN,
    /** A count. */
    COUNT,
    /** 1 for yes, 0 for no. */
    FLAG
  }

  private final String word;
  private final Kind kind;
  private final long programDefault;

  Setting(String word, Kind kind, long programDefault) {
    this.word = word;
    this.kind = kind;
    this.programDefault = programDefault;
  }

  /** Its key in the plan's panel section. */
  @Override
  public String word() {
    return word;
  }

  /** What its number means. */
  public Kind kind() {
    return kind;
  }

  /** The default where nothing else gives one. */
  public long programDefault() {
    return programDefault;
  }

  /** A value of this setting in words, such as {@code 45 s}. */
  public String words(long value) {
    return switch (kind) {
      case COUNT -> Long.toString(value);
      case FLAG -> value == 0 ? "no" : "yes";
      case SPAN -> {
        if (value % 1000 != 0) {
          yield value + " ms";
        }
        long seconds = value / 1000;
        if (seconds >= 7200 && seconds % 3600 == 0) {
          yield seconds / 3600 + " h";
        }
        yield seconds >= 120 && seconds % 60 == 0 ? seconds / 60 + " min" : seconds + " s";
      }
    };
  }
}
