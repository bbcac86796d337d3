package keenward.core.rehearsal;

/** What a zone may do or does beside its response. */
public enum ZoneTrait {
  /** A user may leave it out. */
  BYPASSABLE,
  /** The system may arm while it is open. */
  FORCEABLE,
  /** Opening it while disarmed chimes. */
  CHIME,
  /** Its alarm is not heard or seen on site. */
  SILENT,
  /** Its report waits for the abort window. */
  ABORTABLE,
  /** Its detector stays in alarm until it is reset. */
  LATCHING,
  /** The panel resets its detector and believes only a second look. */
  VERIFIED,
  /** Its restore is reported. */
  RESTORE_REPORTED,
  /** It is a radio device that calls in by itself. */
  RADIO;

  /** Its place in an array; never stored beyond the running program. */
  @SuppressWarnings("EnumOrdinal")
  int slot() {
    return ordinal();
  }
}
