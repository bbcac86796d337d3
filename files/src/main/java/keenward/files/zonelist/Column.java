package keenward.files.zonelist;

import keenward.core.plan.Worded;

/** What a column of a list can hold. */
public enum Column implements Worded {
  /** Number of the zone. */
  NUMBER("number"),
  /** Name of the zone. */
  NAME("name"),
  /** Place; the name where there is no other. */
  PLACE("place"),
  /** What is fitted. */
  DEVICE("device"),
  /** What the system does. */
  RESPONSE("response"),
  /** Partition or partitions. */
  PARTITION("partition"),
  /** How the loop is wired, or that it is radio. */
  WIRING("wiring"),
  /** Serial number of a radio device. */
  SERIAL("serial"),
  /** Entry delay. */
  DELAY("delay"),
  /** DC-05 event code. */
  EVENT("event"),
  /** Anything else; what it says is kept as a note of the zone. */
  NOTE("note");

  private final String word;

  Column(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
