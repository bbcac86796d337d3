package keenward.core.building.placing;

import java.util.List;
import keenward.core.building.Building;
import keenward.core.building.coverage.CoverageMap;
import keenward.core.plan.MissingFact;
import keenward.core.plan.SitePlan;

/**
 * Detectors that are proposed.
 *
 * @param wish what for
 * @param placements the detectors
 * @param atLeast that no fewer will do, among the places looked at
 * @param kept how many motion detectors of the plan count beside them
 * @param rooms how much of each wanted room is seen then
 * @param plan the plan with them
 * @param building the building
 * @param coverage what all its detectors see then
 * @param notAssessed what could not be told
 */
public record Suggestion(
    Wish wish,
    List<Placement> placements,
    int atLeast,
    int kept,
    List<RoomResult> rooms,
    SitePlan plan,
    Building building,
    CoverageMap coverage,
    List<MissingFact> notAssessed) {

  private static final double ROUNDING = 1e-9;

  /**
   * What comes of it for a room.
   *
   * @param room name of the room
   * @param before share of its floor that is seen often enough without them
   * @param after the same with them
   * @param most the same with a detector at every place looked at
   * @param candidates at how many places of it a detector was tried
   */
  public record RoomResult(String room, double before, double after, double most, int candidates) {

    /** Whether the wish cannot be met, wherever detectors go. */
    public boolean isOutOfReach(Wish wish) {
      return most < wish.share() - ROUNDING;
    }

    /** Whether less of it is seen than wished. */
    public boolean isShort(Wish wish) {
      return after < wish.share() - ROUNDING;
    }
  }

  public Suggestion {
    placements = List.copyOf(placements);
    rooms = List.copyOf(rooms);
    notAssessed = List.copyOf(notAssessed);
  }

  /** How many more than could be proved needed. */
  public int gap() {
    return placements.size() - atLeast;
  }
}
