package keenward.core.rehearsal;

/**
 * One number for each partition in a {@link State}. Times are what is left, in tenths of a second;
 * 0 is not running.
 */
enum PartitionRegister {
  /** The mode as in {@link Modes}. */
  MODE,
  /** Slot of the {@link Way} in which it was armed. */
  WAY,
  /** Index of the user who armed it plus one. */
  USER,
  /** Whether its closing was sent. */
  CLOSING_SENT,
  /** Whether an exit door was opened in this exit time. */
  EXIT_OPENED,
  /** Whether the exit time was restarted. */
  EXIT_RESTARTED,
  /** Index of the zone that started the entry time plus one. */
  ENTRY_ZONE,
  /** Whether a report that had waited for the abort window was sent within the cancel window. */
  WAITED_REPORT_SENT,
  /** Whether the pending alarm came soon after arming. */
  RECENT_PENDING,
  /** Whether the strobe flashes for it. */
  STROBE,
  /** By how much automatic arming was put off. */
  POSTPONED,
  EXIT_LEFT,
  ENTRY_LEFT,
  VERIFY_LEFT,
  ABORT_LEFT,
  BURGLARY_LEFT,
  FIRE_LEFT,
  GAS_LEFT,
  MEDICAL_LEFT,
  GAS_REPEAT_LEFT,
  CANCEL_LEFT,
  RECENT_LEFT,
  SWINGER_LEFT,
  ARMING_WARNING_LEFT,
  ARMING_LEFT;

  /** Its place in an array; never stored beyond the running program. */
  @SuppressWarnings("EnumOrdinal")
  int slot() {
    return ordinal();
  }
}
