package keenward.core.proof;

/**
 * A usual caution of a test; common practice. Local code and the authority having jurisdiction come
 * first.
 */
public enum Caution {
  /** Signals send help. */
  SENDS_HELP(
      "This signal sends help. The account must be on test with the monitoring centre, and the centre must have said so,"
          + " before the test."),
  /** Sounders are loud. */
  LOUD("Sounders start: warn the people in and near the building, protect your hearing."),
  /** Work above the floor. */
  LADDER(
      "Mounted high: use a ladder fit for it, footed and on firm ground, or a pole made for the tester."),
  /** Test gas. */
  TEST_GAS(
      "Use only the test gas that the detector's maker names, in the amount named; air the room afterwards."),
  /** No smoke, no flame. */
  NO_FLAME("Never use real smoke or a flame: use the tester that the detector's maker names."),
  /** No broken glass. */
  NO_BREAKING("Do not strike or break glass: use a tester made for the detector."),
  /** Mains voltage. */
  MAINS(
      "Mains voltage can kill. Switch off at the isolator only; opening mains covers is for licensed people under local"
          + " code."),
  /** Batteries. */
  BATTERY(
      "A battery can give hundreds of amperes: no rings, insulated tools, take off the negative lead first, no short."),
  /** People rely on fire and gas alarms. */
  LIFE_SAFETY(
      "People rely on this alarm: say who watches for fire and gas while it is on test, and keep that time short.");

  private final String text;

  Caution(String text) {
    this.text = text;
  }

  /** The caution in full. */
  public String text() {
    return text;
  }
}
