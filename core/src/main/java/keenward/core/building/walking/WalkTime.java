package keenward.core.building.walking;

import java.util.Optional;
import keenward.core.plan.Pace;
import keenward.core.quantities.Span;

/**
 * How long a walk takes somebody, with what they do at its ends.
 *
 * @param route the walk
 * @param pace how they walk
 * @param doorSeconds what the door takes them
 * @param keypadSeconds what the keypad takes them
 * @param isKeypadStated whether the plan states the time at the keypad
 */
public record WalkTime(
    WalkingRoute route,
    Pace pace,
    double doorSeconds,
    double keypadSeconds,
    boolean isKeypadStated) {

  /** A code of four digits and the key that ends it. Common practice, no source. */
  private static final int KEYS = 5;

  /** From a door to the keypad, until it is disarmed: what the entry delay has to last. */
  public static WalkTime in(WalkingRoute route, Optional<Walk.Habitual> habitual) {
    Pace pace = pace(habitual);
    Optional<Double> stated =
        habitual
            .map(Walk.Habitual::habit)
            .flatMap(habit -> habit.keypadTime().find())
            .map(Span::seconds);
    return new WalkTime(
        route,
        pace,
        Handling.doorSeconds(pace),
        stated.orElse(Handling.keypadSeconds(pace, KEYS)),
        stated.isPresent());
  }

  /** From the keypad, armed, out of a door: what the exit delay has to last. */
  public static WalkTime out(WalkingRoute route, Optional<Walk.Habitual> habitual) {
    Pace pace = pace(habitual);
    return new WalkTime(route, pace, Handling.doorSeconds(pace), 0, false);
  }

  /** Without doors or keys. */
  public static WalkTime plain(WalkingRoute route) {
    return new WalkTime(route, Pace.SLOW, 0, 0, false);
  }

  /** Anybody may be slow; somebody known whose pace is not stated is taken as usual. */
  private static Pace pace(Optional<Walk.Habitual> habitual) {
    return habitual
        .map(Walk.Habitual::person)
        .map(person -> person.pace().orElse(Pace.USUAL))
        .orElse(Pace.SLOW);
  }

  /** How long so many of 100 such people need at most. */
  public double seconds(Gait.Share share) {
    return doorSeconds + route.seconds(Gait.of(pace, share)) + keypadSeconds;
  }
}
