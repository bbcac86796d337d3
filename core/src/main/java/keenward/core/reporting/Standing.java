package keenward.core.reporting;

/** Whether a code may be chosen for a zone or sent by a panel. */
public enum Standing {
  /** May be sent. */
  USUAL("usual"),
  /** The heading of a block of codes rather than an event; decode it, do not choose it. */
  HEADING("heading"),
  /** Superseded: decode it, do not send it. */
  DECODE_ONLY("decode-only"),
  /** Kept for private use. */
  RESERVED("reserved");

  private final String word;

  Standing(String word) {
    this.word = word;
  }

  /** The word in the event table. */
  String word() {
    return word;
  }
}
