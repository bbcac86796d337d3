package keenward.core.electrical;

/** The states in which cables are computed. */
public enum CableState {
  /** Battery full, nothing in alarm. */
  FULL_AT_REST("battery full, at rest", Cells.FULL_VOLTS, false),
  /** Battery full, every device in alarm. */
  FULL_IN_ALARM("battery full, in alarm", Cells.FULL_VOLTS, true),
  /** End of discharge, every device in alarm: the state that is judged. */
  EMPTY_IN_ALARM("end of discharge, in alarm", EndVoltage.VOLTS_A_CELL, true);

  private final String words;
  private final double voltsACell;
  private final boolean isAlarm;

  CableState(String words, double voltsACell, boolean isAlarm) {
    this.words = words;
    this.voltsACell = voltsACell;
    this.isAlarm = isAlarm;
  }

  /** The state in words. */
  public String words() {
    return words;
  }

  double volts(int cells) {
    return cells * voltsACell;
  }

  double milliamps(LoadLine load) {
    return isAlarm ? load.alarmMilliamps() : load.standbyMilliamps();
  }
}
