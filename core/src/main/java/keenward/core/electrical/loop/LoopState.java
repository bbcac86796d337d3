package keenward.core.electrical.loop;

/** What a loop can be in. */
public enum LoopState {
  SHORT("shorted"),
  AT_REST("at rest"),
  IN_ALARM("in alarm"),
  IN_FAULT("in fault"),
  ALARM_AND_FAULT("in alarm and fault"),
  CUT("cut"),
  /** Where nothing tells them apart. */
  ALARM_OR_CUT("in alarm or cut"),
  ALARM_OR_SHORT("in alarm or shorted"),
  REST_OR_CUT("at rest or cut");

  private final String words;

  LoopState(String words) {
    this.words = words;
  }

  /** In words. */
  public String words() {
    return words;
  }
}
