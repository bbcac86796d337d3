package keenward.core.rehearsal;

/** What the sounders give, from the least to the most urgent; the most urgent one wins. */
public enum Tone {
  /** Nothing. */
  SILENT("silent"),
  /** Somebody needs medical help. */
  MEDICAL("medical"),
  /** Burglary, hold-up that may be heard, tamper. */
  BURGLARY("burglary"),
  /** Carbon monoxide. */
  CARBON_MONOXIDE("carbon monoxide"),
  /** Fire. */
  FIRE("fire");

  private static final Tone[] ALL = values();

  private final String word;

  Tone(String word) {
    this.word = word;
  }

  /** Its name in plain words. */
  public String word() {
    return word;
  }

  /** Its place in an array; never stored beyond the running program. */
  @SuppressWarnings("EnumOrdinal")
  int slot() {
    return ordinal();
  }

  /** The one with this slot. */
  static Tone of(int slot) {
    return ALL[slot];
  }
}
