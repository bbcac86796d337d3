package keenward.core.radio;

import java.util.List;
import java.util.Optional;
import keenward.core.plan.MissingFact;

/**
 * The straight way between two aerials.
 *
 * @param megahertz the frequency
 * @param metres how long it is, at least {@link #LEAST_METRES}
 * @param crossed the walls, openings and floors in its way; an open doorway takes nothing and is
 *     left out
 * @param floors how many floors it crosses
 * @param open a wall in its way of which the plan does not say what it is made of
 */
public record RadioPath(
    double megahertz,
    double metres,
    List<Crossed> crossed,
    int floors,
    Optional<MissingFact> open) {

  /** Nearer than this the formulas do not hold (P.1238: from 1 m). */
  public static final double LEAST_METRES = 1;

  /**
   * Something in the way.
   *
   * @param what what it is, in words
   * @param obstacle what it takes
   */
  public record Crossed(String what, Obstacle obstacle) {}

  public RadioPath {
    crossed = List.copyOf(crossed);
  }

  /** Loss of the distance alone. */
  public double freeSpaceDecibels() {
    return FreeSpace.lossDecibels(megahertz, metres);
  }

  /** Loss of all that is in the way. */
  public double obstacleDecibels() {
    return crossed.stream().mapToDouble(each -> each.obstacle().decibels()).sum();
  }
}
