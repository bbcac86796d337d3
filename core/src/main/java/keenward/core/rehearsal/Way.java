package keenward.core.rehearsal;

/** By which way the system was armed or disarmed. */
enum Way {
  KEYPAD,
  FOB,
  REMOTE,
  AUTOMATIC,
  KEY_SWITCH;

  private static final Way[] ALL = values();

  /** Its place in an array; never stored beyond the running program. */
  @SuppressWarnings("EnumOrdinal")
  int slot() {
    return ordinal();
  }

  /** The one with this slot. */
  static Way of(int slot) {
    return ALL[slot];
  }
}
