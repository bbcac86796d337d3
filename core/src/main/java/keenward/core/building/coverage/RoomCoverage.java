package keenward.core.building.coverage;

import java.util.List;

/**
 * How much of a room is watched. Floor under furniture does not count: nobody stands there.
 *
 * @param room name of the room
 * @param floorSquareMetres floor to stand on
 * @param seenSquareMetres how much of it at least one detector sees
 * @param seenTwiceSquareMetres how much of it two or more see
 * @param detectors names of the detectors that see any of it, in the order of the plan
 * @param gaps where a person can stand unseen, largest first
 */
public record RoomCoverage(
    String room,
    double floorSquareMetres,
    double seenSquareMetres,
    double seenTwiceSquareMetres,
    List<String> detectors,
    List<Gap> gaps) {

  public RoomCoverage {
    detectors = List.copyOf(detectors);
    gaps = List.copyOf(gaps);
  }

  /** The seen share, 0 to 1. */
  public double share() {
    return floorSquareMetres == 0 ? 0 : Math.min(1, seenSquareMetres / floorSquareMetres);
  }

  /** Whether anything watches it at all. */
  public boolean isWatched() {
    return !detectors.isEmpty();
  }
}
