package keenward.core.building.placing;

import java.util.Optional;
import keenward.core.building.plane.SeenArea;
import keenward.core.plan.DeviceType;
import keenward.core.plan.Point;

/**
 * A place at which a detector could go.
 *
 * @param type the detector
 * @param typeOrder its place among the types to choose from, from 0
 * @param floor name of the floor
 * @param room name of the room
 * @param at where
 * @param bearingDegrees where it looks, clockwise from the top of the plan; empty where it looks
 *     all round
 * @param mount on what
 * @param seen what it would see
 * @param glare the opening to outside that it would look straight at
 */
public record Candidate(
    DeviceType type,
    int typeOrder,
    String floor,
    String room,
    Point at,
    Optional<Double> bearingDegrees,
    Mount mount,
    SeenArea seen,
    Optional<String> glare) {

  /** On what a detector is fitted. */
  public enum Mount {
    /** In a corner. */
    CORNER("in a corner"),
    /** On a wall. */
    WALL("on the wall"),
    /** On the ceiling. */
    CEILING("on the ceiling");

    private final String words;

    Mount(String words) {
      this.words = words;
    }

    /** In words. */
    public String words() {
      return words;
    }
  }

  /**
   * How much worse it is than another that sees as much, below 1: sun in its eyes, then a wall
   * instead of a corner (common practice, no source), then a type that the plan states later.
   */
  double misfit() {
    return (glare.isPresent() ? 0.2 : 0)
        + (mount == Mount.CORNER ? 0 : 0.05)
        + 0.01 * Math.min(typeOrder, 9);
  }
}
