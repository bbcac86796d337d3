package keenward.core.rehearsal;

/** A choice that careful panels make differently. Each is yes or no and has a stated default. */
public enum Option {
  /** The closing signal goes out when the exit time starts instead of when it ends. */
  CLOSING_SIGNAL_AT_START("closing signal at start", false),
  /** Opening the exit door again starts the exit time again, once. */
  EXIT_RESTART("exit restart", true),
  /** Arming away at a keypad without leaving arms stay. */
  AUTOMATIC_STAY("automatic stay", true),
  /** A door left open at the end of the exit time is left out once it has been reported. */
  EXIT_ERROR_BYPASS("exit error bypass", false),
  /** During the exit time zones off the exit route are ignored too. */
  EXIT_IGNORES_OTHER_ZONES("exit ignores other zones", false),
  /** A zone that is already open when the exit time ends counts as violated. */
  OPEN_AT_EXIT_END_ALARMS("open at exit end alarms", true),
  /** A second delayed zone with a shorter delay shortens the entry time. */
  SHORTER_ENTRY_WINS("shorter entry wins", true),
  /** A report of an alarm off the entry route waits for the end of the entry time. */
  REPORT_WAITS_FOR_ENTRY_END("report waits for entry end", false),
  /** A zone left out by forced arming is watched again once it has closed. */
  FORCED_ZONES_RETURN("forced zones return", true),
  /** Remote and automatic arming leave open zones out that may be left out. */
  REMOTE_ARMING_FORCES("remote arming forces", false),
  /** Remote arming has no exit time. */
  REMOTE_ARMING_WITHOUT_EXIT_TIME("remote arming without exit time", false),
  /** The tamper contact of a bypassed zone is still watched. */
  TAMPER_LIVE_WHEN_BYPASSED("tamper live when bypassed", true),
  /** Silencing a 24-hour alarm by code reports its restore, closed or not. */
  SILENCING_RESTORES("silencing restores", false),
  /** A tamper while disarmed is a full alarm. */
  TAMPER_ALARM_WHEN_DISARMED("tamper alarm when disarmed", false),
  /** A tamper stays until a technician resets it. */
  TAMPER_NEEDS_TECHNICIAN("tamper needs technician", false),
  /** Chime works when armed stay. */
  CHIME_IN_STAY("chime in stay", false),
  /** A bypassed zone chimes. */
  CHIME_WHEN_BYPASSED("chime when bypassed", false),
  /** The same zone twice within the window satisfies a cross-zone group. */
  CROSS_ZONE_REPEAT_COUNTS("cross-zone repeat counts", false),
  /** A zone all of whose cross-zone partners are left out alarms alone. */
  CROSS_ZONE_ALONE_WHEN_PARTNERS_OUT("cross-zone alone when partners out", true),
  /** A restore is not reported while the sounder runs. */
  RESTORE_WAITS_FOR_CUT_OFF("restore waits for cut-off", false),
  /** Somebody who may only arm may disarm what they armed themselves. */
  ARM_ONLY_DISARMS_OWN("arm-only disarms own", true),
  /** A radio device found missing while armed is an alarm. */
  MISSING_ALARMS_WHEN_ARMED("missing alarms when armed", false),
  /** Programming can't be left while an always live zone is open. */
  PROGRAMMING_STAYS_WHILE_OPEN("programming stays while open", false),
  /** An always live zone that is open when programming ends alarms; otherwise it is shown as trouble. */
  LEAVING_PROGRAMMING_ALARMS("leaving programming alarms", true),
  /** The panel restarts when programming ends. */
  RESTART_AFTER_PROGRAMMING("restart after programming", false),
  /** A restart keeps what was armed. */
  RESTART_KEEPS_ARMED("restart keeps armed", true),
  /** The strobe stops with the sounder instead of at disarming. */
  STROBE_STOPS_WITH_SOUNDER("strobe stops with sounder", false),
  /** A code alone arms away when nothing is armed. */
  CODE_ALONE_ARMS("code alone arms", false);

  private final String word;
  private final boolean standard;

  Option(String word, boolean standard) {
    this.word = word;
    this.standard = standard;
  }

  /** Its name in plain words. */
  public String word() {
    return word;
  }

  /** Its value where nothing else is said. */
  public boolean standard() {
    return standard;
  }

  /** Its place in an array; never stored beyond the running program. */
  @SuppressWarnings("EnumOrdinal")
  int slot() {
    return ordinal();
  }
}
