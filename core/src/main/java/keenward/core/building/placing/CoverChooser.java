package keenward.core.building.placing;

import java.util.List;
import keenward.core.progress.Progress;

/** Solves the choice of candidates. */
public interface CoverChooser {

  /**
   * A choice.
   *
   * @param chosen indices of the candidates, ascending
   * @param atLeast that no fewer will do
   */
  record Choice(List<Integer> chosen, int atLeast) {
    public Choice {
      chosen = List.copyOf(chosen);
    }
  }

  /**
   * A choice that solves the problem, of as few candidates as could be found.
   *
   * @param problem one that all its candidates together solve
   */
  Choice choose(CoverProblem problem, Progress progress);
}
