package keenward.core.building.placing;

import java.util.List;

/**
 * The choice of the fewest candidates that see enough of some rooms.
 *
 * @param misfits for each candidate how much worse it is than another, from 0 to below 1
 * @param patches pieces of floor
 * @param needs for each room how much floor is to be seen, in square metres
 * @param times by how many detectors a patch has to be seen to count
 */
public record CoverProblem(
    List<Double> misfits, List<Patch> patches, List<Double> needs, int times) {

  /**
   * Floor of one room that the same candidates see.
   *
   * @param room index of its room among the needs
   * @param squareMetres its area
   * @param already by how many detectors of the plan it is seen
   * @param seenBy indices of the candidates that see it, ascending
   */
  public record Patch(int room, double squareMetres, int already, List<Integer> seenBy) {
    public Patch {
      seenBy = List.copyOf(seenBy);
    }
  }

  public CoverProblem {
    misfits = List.copyOf(misfits);
    patches = List.copyOf(patches);
    needs = List.copyOf(needs);
  }

  /** How much of a room's floor is seen often enough by a choice, in square metres. */
  public double seenSquareMetres(int room, List<Integer> chosen) {
    double seen = 0;
    for (Patch patch : patches) {
      if (patch.room() == room
          && patch.already() + patch.seenBy().stream().filter(chosen::contains).count() >= times) {
        seen += patch.squareMetres();
      }
    }
    return seen;
  }

  /** Whether a choice sees enough of every room. */
  public boolean isSolvedBy(List<Integer> chosen) {
    for (int room = 0; room < needs.size(); room++) {
      if (seenSquareMetres(room, chosen) < needs.get(room) - 1e-6) {
        return false;
      }
    }
    return true;
  }
}
