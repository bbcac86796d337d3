package keenward.core.building.walking;

import java.util.Optional;
import keenward.core.building.Route;
import keenward.core.plan.Device;
import keenward.core.plan.Habit;
import keenward.core.plan.Person;

/**
 * A walk from an entry door to a keypad.
 *
 * @param keypad the keypad
 * @param route the rooms walked through, first and last included
 * @param drawn the shortest walk as drawn, or why there is none
 * @param habitual who walks so, when a habit of the plan says it
 */
public record Walk(
    Device keypad, Route route, WalkingMap.Search drawn, Optional<Habitual> habitual) {

  /**
   * A habit and whose it is.
   *
   * @param person the person
   * @param habit the habit
   */
  public record Habitual(Person person, Habit habit) {}
}
