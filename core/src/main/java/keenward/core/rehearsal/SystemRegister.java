package keenward.core.rehearsal;

/** One number for the whole system in a {@link State}. */
enum SystemRegister {
  /** Slot of the tone that the sounders give. */
  TONE,
  /** Whether the strobe flashes. */
  STROBE,
  /** Whether mains is absent. */
  MAINS_ABSENT,
  /** Whether that was reported. */
  MAINS_REPORTED,
  /** Whether the battery is low. */
  BATTERY_LOW,
  /** Whether that was reported. */
  BATTERY_REPORTED,
  /** Whether programming is open. */
  PROGRAMMING,
  MAINS_LEFT,
  BATTERY_TEST_LEFT,
  START_UP_LEFT;

  /** Its place in an array; never stored beyond the running program. */
  @SuppressWarnings("EnumOrdinal")
  int slot() {
    return ordinal();
  }
}
