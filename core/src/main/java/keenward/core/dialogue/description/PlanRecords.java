package keenward.core.dialogue.description;

/** What of the site plan the records of a kind stand for, number by number. */
public enum PlanRecords {
  /** The zones. */
  ZONES("zones"),
  /** The partitions. */
  PARTITIONS("partitions"),
  /** The users. */
  USERS("users"),
  /** The entry delays. */
  ENTRY_DELAYS("entry delays"),
  /** The keypads, counted from 1 in the order of the plan's devices. */
  KEYPADS("keypads");

  private final String word;

  PlanRecords(String word) {
    this.word = word;
  }

  /** The word in a panel description. */
  public String word() {
    return word;
  }
}
