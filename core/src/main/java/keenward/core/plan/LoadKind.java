package keenward.core.plan;

/** What a device draws when its voltage falls. Its currents are stated at the nominal voltage. */
public enum LoadKind implements Worded {
  /** The same current at every voltage: a linear regulator. */
  CURRENT("current"),
  /** The same power, so a greater current at a lower voltage: a switching regulator. */
  POWER("power"),
  /** A current in proportion to the voltage: a lamp, a heater, a relay coil. */
  RESISTANCE("resistance");

  private final String word;

  LoadKind(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
