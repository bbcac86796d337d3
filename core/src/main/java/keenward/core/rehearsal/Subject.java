package keenward.core.rehearsal;

/** What the index in a notice or a reason names. */
public enum Subject {
  /** A zone. */
  ZONE,
  /** A partition. */
  PARTITION,
  /** A user. */
  USER,
  /** A keypad. */
  KEYPAD,
  /** The system as a whole. */
  SYSTEM
}
