package keenward.core.plan;

import java.util.List;

/**
 * Somebody who lives or works on the site, or looks after it.
 *
 * @param name name, unique in the plan
 * @param pace walking pace
 * @param phone telephone number
 * @param habits what they regularly do to the system
 */
public record Person(String name, Fact<Pace> pace, Fact<String> phone, List<Habit> habits) {

  public Person {
    habits = List.copyOf(habits);
  }
}
