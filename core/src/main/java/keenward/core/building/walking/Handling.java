package keenward.core.building.walking;

import keenward.core.plan.Pace;

/** How long doors and keypads take, where a plan does not say. */
public final class Handling {

  /** Making up one's mind (M of the keystroke-level model; Card, Moran and Newell 1980, read). */
  private static final double THINK_SECONDS = 1.35;

  /** Bringing the hand to the keys (H, read). */
  private static final double REACH_SECONDS = 0.4;

  private Handling() {}

  /**
   * To open a door, step in and close it: 3 s, and 5 s for slow people. No source but common
   * practice (3 to 5 s).
   */
  public static double doorSeconds(Pace pace) {
    return pace == Pace.SLOW ? 5 : 3;
  }

  /**
   * To press so many keys: M + H + K for each key, by the keystroke-level model. K is 1.2 s for
   * slow people ("unfamiliar with the keyboard") and 0.5 s for others ("random letters").
   */
  public static double keypadSeconds(Pace pace, int keys) {
    return THINK_SECONDS + REACH_SECONDS + keys * (pace == Pace.SLOW ? 1.2 : 0.5);
  }
}
