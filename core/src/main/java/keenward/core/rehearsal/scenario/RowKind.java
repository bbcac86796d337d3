package keenward.core.rehearsal.scenario;

/** Where something is noticed. */
public enum RowKind {
  /** It happens to the system. */
  INPUT("input"),
  /** A keypad shows it. */
  DISPLAY("display"),
  /** A keypad gives it to be heard. */
  KEYPAD_TONE("keypad tone"),
  /** The sounders. */
  SOUNDER("sounder"),
  /** The strobe. */
  STROBE("strobe"),
  /** The monitoring centre. */
  SIGNAL("signal"),
  /** The log of the panel. */
  LOG("log"),
  /** Nowhere: it has no effect, and the row says why. */
  NO_EFFECT("no effect");

  private final String word;

  RowKind(String word) {
    this.word = word;
  }

  /** Its name in plain words. */
  public String word() {
    return word;
  }
}
