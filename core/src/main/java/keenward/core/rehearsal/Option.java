package keenward.core.rehearsal;

/** A choice that careful panels make differently. Each is yes or no and has a stated default. */
public enum Option {
  CLOSING_SIGNAL_AT_START(
      "closing signal at start",
      false,
      "the closing signal goes out when the exit time starts instead of when it ends"),
  EXIT_RESTART(
      "exit restart", true, "opening the exit door again starts the exit time again, once"),
  AUTOMATIC_STAY("automatic stay", true, "arming away at a keypad without leaving arms stay"),
  EXIT_ERROR_BYPASS(
      "exit error bypass",
      false,
      "a door left open at the end of the exit time is left out once it has been reported"),
  EXIT_IGNORES_OTHER_ZONES(
      "exit ignores other zones",
      false,
      "during the exit time zones off the exit route are ignored too"),
  OPEN_AT_EXIT_END_ALARMS(
      "open at exit end alarms",
      true,
      "a zone that is already open when the exit time ends counts as violated"),
  SHORTER_ENTRY_WINS(
      "shorter entry wins",
      true,
      "a second delayed zone with a shorter delay shortens the entry time"),
  REPORT_WAITS_FOR_ENTRY_END(
      "report waits for entry end",
      false,
      "a report of an alarm off the entry route waits for the end of the entry time"),
  FORCED_ZONES_RETURN(
      "forced zones return",
      true,
      "a zone left out by forced arming is watched again once it has closed"),
  REMOTE_ARMING_FORCES(
      "remote arming forces",
      false,
      "remote and automatic arming leave open zones out that may be left out"),
  REMOTE_ARMING_WITHOUT_EXIT_TIME(
      "remote arming without exit time", false, "remote arming has no exit time"),
  TAMPER_LIVE_WHEN_BYPASSED(
      "tamper live when bypassed", true, "the tamper contact of a bypassed zone is still watched"),
  SILENCING_RESTORES(
      "silencing restores",
      false,
      "silencing a 24-hour alarm by code reports its restore, closed or not"),
  TAMPER_ALARM_WHEN_DISARMED(
      "tamper alarm when disarmed", false, "a tamper while disarmed is a full alarm"),
  TAMPER_NEEDS_TECHNICIAN(
      "tamper needs technician", false, "a tamper stays until a technician resets it"),
  CHIME_IN_STAY("chime in stay", false, "chime works when armed stay"),
  CHIME_WHEN_BYPASSED("chime when bypassed", false, "a bypassed zone chimes"),
  CROSS_ZONE_REPEAT_COUNTS(
      "cross-zone repeat counts",
      false,
      "the same zone twice within the window satisfies a cross-zone group"),
  CROSS_ZONE_ALONE_WHEN_PARTNERS_OUT(
      "cross-zone alone when partners out",
      true,
      "a zone all of whose cross-zone partners are left out alarms alone"),
  RESTORE_WAITS_FOR_CUT_OFF(
      "restore waits for cut-off", false, "a restore is not reported while the sounder runs"),
  ARM_ONLY_DISARMS_OWN(
      "arm-only disarms own",
      true,
      "somebody who may only arm may disarm what they armed themselves"),
  MISSING_ALARMS_WHEN_ARMED(
      "missing alarms when armed", false, "a radio device found missing while armed is an alarm"),
  PROGRAMMING_STAYS_WHILE_OPEN(
      "programming stays while open",
      false,
      "programming can't be left while an always live zone is open"),
  LEAVING_PROGRAMMING_ALARMS(
      "leaving programming alarms",
      true,
      "an always live zone that is open when programming ends alarms; otherwise it is shown as trouble"),
  RESTART_AFTER_PROGRAMMING(
      "restart after programming", false, "the panel restarts when programming ends"),
  RESTART_KEEPS_ARMED("restart keeps armed", true, "a restart keeps what was armed"),
  STROBE_STOPS_WITH_SOUNDER(
      "strobe stops with sounder",
      false,
      "the strobe stops with the sounder instead of at disarming"),
  CODE_ALONE_ARMS("code alone arms", false, "a code alone arms away when nothing is armed");

  private final String word;
  private final boolean standard;
  private final String meaning;

  Option(String word, boolean standard, String meaning) {
    this.word = word;
    this.standard = standard;
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
