package keenward.core.rehearsal.scenario;

import java.util.Collection;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Finds the name that somebody probably meant. */
final class NearestName {

  private static final int LONGEST = 200;

  private NearestName() {}

  /**
   * The nearest of some names, if one is near enough: at most a third of its letters differ, and
   * one more.
   */
  static Optional<String> find(String wanted, Collection<String> names) {
    @Nullable String best = null;
    int bestDistance = Integer.MAX_VALUE;
    if (wanted.length() > LONGEST) {
      return Optional.empty();
    }
    for (String name : names) {
      int distance = distance(Wording.folded(wanted), Wording.folded(name));
      if (distance < bestDistance && distance <= name.length() / 3 + 1) {
        best = name;
        bestDistance = distance;
      }
    }
    return Optional.ofNullable(best);
  }

  /** Levenshtein's distance: letters put in, taken out or changed. */
  static int distance(String from, String to) {
    int[] above = new int[to.length() + 1];
    for (int column = 0; column < above.length; column++) {
      above[column] = column;
    }
    for (int row = 1; row <= from.length(); row++) {
      int[] here = new int[above.length];
      here[0] = row;
      for (int column = 1; column < here.length; column++) {
        int changed = from.charAt(row - 1) == to.charAt(column - 1) ? 0 : 1;
        here[column] =
            Math.min(Math.min(here[column - 1], above[column]) + 1, above[column - 1] + changed);
      }
      above = here;
    }
    return above[to.length()];
  }
}
