package keenward.core.plan;

/** What an opening is. */
public enum OpeningKind implements Worded {
  /** Door with a leaf. */
  DOOR("door"),
  /** Door with two leaves. */
  DOUBLE_DOOR("double-door"),
  /** Sliding door. */
  SLIDING_DOOR("sliding-door"),
  /** Opening without a leaf. */
  DOORWAY("doorway"),
  /** Window that opens. */
  WINDOW("window"),
  /** Window that does not open. */
  FIXED_WINDOW("fixed-window"),
  /** Roller shutter. */
  ROLLER_SHUTTER("roller-shutter"),
  /** Roof window or skylight. */
  ROOF_WINDOW("roof-window"),
  /** Hatch or trap door. */
  HATCH("hatch"),
  /** Gate. */
  GATE("gate");

  private final String word;

  OpeningKind(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }

  /** Whether people walk through it as a rule: no windows, and nothing to climb through. */
  public boolean isForWalking() {
    return switch (this) {
      case DOOR, DOUBLE_DOOR, SLIDING_DOOR, DOORWAY, ROLLER_SHUTTER, GATE -> true;
      case WINDOW, FIXED_WINDOW, ROOF_WINDOW, HATCH -> false;
    };
  }
}
