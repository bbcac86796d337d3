package keenward.core.plan;

/** A regime with figures in this program, or one without. */
public enum Standard implements Worded {
  /** ANSI/SIA CP-01, control panel features for false alarm reduction. */
  CP_01("cp-01"),
  /** EN 50131, intrusion and hold-up systems; carries a grade. */
  EN50131("en50131"),
  /** UL 1023, household burglar-alarm system units. */
  UL1023("ul1023"),
  /** NFPA 72, the household fire alarm chapter. */
  NFPA72_HOUSEHOLD("nfpa72-household"),
  /** A regime whose figures this program does not hold: not assessed. */
  OTHER("other");

  private final String word;

  Standard(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
