package keenward.core.electrical;

/** How far a computed figure can be relied on. */
public enum Certainty {
  /** Everything that goes into it is known. */
  KNOWN,
  /** Something is unknown and counted as nothing: the true figure is this or more. */
  AT_LEAST,
  /** Something is unknown and counted as nothing: the true figure is this or less. */
  AT_MOST;

  /** The less certain of two figures that err in the same direction. */
  public Certainty and(Certainty other) {
    return this == KNOWN ? other : this;
  }

  /** Words to put before the figure. */
  public String words() {
    return switch (this) {
      case KNOWN -> "";
      case AT_LEAST -> "at least ";
      case AT_MOST -> "at most ";
    };
  }
}
