package keenward.core.rehearsal;

/** One bit for each zone in a {@link State}. */
enum ZoneFlag {
  /** It is violated. */
  OPEN,
  /** The lid of its device is open. */
  LID_OPEN,
  /** A user left it out. */
  BYPASSED,
  /** Forced arming left it out. */
  FORCED,
  /** A technician took it out of service. */
  ISOLATED,
  /** It caused an alarm since its partition was last armed. */
  ALARMED,
  /** Its report waits for the abort window. */
  PENDING,
  /** Its alarm was sent and its restore was not. */
  REPORTED,
  /** It is an exit door that was opened and shut in the exit time that is running. */
  LEFT_BY,
  /** It was opened in the entry time that is running. */
  ENTERED,
  /** It reached its swinger limit and that was reported. */
  SHUT_OUT,
  /** Its detector is latched in alarm. */
  LATCHED,
  /** Its detector was reset and is looked at again. */
  VERIFYING,
  /** It was left open at the end of the exit time. */
  EXIT_ERROR,
  /** A tamper is shown and waits for its end. */
  TAMPERED,
  /** That tamper was an alarm. */
  TAMPER_ALARM,
  /** It was reported missing. */
  MISSING,
  /** Its low cell was reported. */
  CELL_LOW;

  /** Its place in an array; never stored beyond the running program. */
  @SuppressWarnings("EnumOrdinal")
  int slot() {
    return ordinal();
  }
}
