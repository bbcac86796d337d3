package keenward.core.plan;

import java.util.List;

/**
 * Somebody who holds a code. The code itself is never in a plan.
 *
 * @param number number at the panel and in signals, from 1
 * @param name name at the keypad and on paper
 * @param role what they may do
 * @param partitions names of the partitions they may use; never empty (all partitions when the plan
 *     says nothing)
 * @param person name of the person of the plan, when they are one
 * @param mayBypass whether they may leave zones out
 */
public record User(
    int number,
    String name,
    UserRole role,
    List<String> partitions,
    Fact<String> person,
    Fact<Boolean> mayBypass) {

  public User {
    partitions = List.copyOf(partitions);
  }
}
