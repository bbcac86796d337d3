package keenward.core.building.walking;

import java.util.List;
import java.util.Optional;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.Opening;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Ties;
import keenward.core.plan.Zone;

/**
 * How people come in by the door of one entry-exit zone.
 *
 * @param zone the entry-exit zone
 * @param door the opening that it watches; empty when only the room of its detector is known
 * @param start name of the door, or of the room where the walk begins
 * @param walks the walks that habits state; without a habit those to the nearest keypads, of which
 *     any will do; empty when no keypad can be reached
 * @param byHabit whether the walks come from habits
 */
public record EntryWay(
    Zone zone, Optional<Opening> door, String start, List<Walk> walks, boolean byHabit) {

  public EntryWay {
    walks = List.copyOf(walks);
  }

  /**
   * Whether a zone that sees somebody come in this way alarms at once when all is armed, and the
   * plan gives no reason for it.
   */
  public boolean isAlarmedBy(SitePlan plan, Zone other) {
    boolean atOnce =
        switch (other.response()) {
          case INSTANT, PERIMETER -> true;
          case FOLLOWER -> !other.follows().isEmpty() && !other.follows().contains(zone.number());
          default -> false;
        };
    return atOnce
        && other.number() != zone.number()
        && other.liveModes().contains(ArmingMode.AWAY)
        && other.reason().find().isEmpty()
        && Ties.meet(Ties.of(plan, zone.partitions()), other.partitions());
  }
}
