package keenward.files.shape;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the word that a person most likely meant. */
public final class NearestWord {

  private static final int LONGEST = 60;

  private NearestWord() {}

  /**
   * The candidate that differs least: in case, hyphens and spaces alone, or by at most a third of
   * its letters; the first of several. Empty when none comes near.
   */
  public static Optional<String> find(String word, Collection<String> candidates) {
    String wanted = normal(word);
    // One number is no slip of another.
    if (word.length() > LONGEST || wanted.matches("[0-9]+")) {
      return Optional.empty();
    }
    int least = wanted.length() / 3 + 1;
    String nearest = null;
    for (String candidate : candidates) {
      if (candidate.length() <= LONGEST) {
        int distance = new LevenshteinDistance(least - 1).apply(wanted, normal(candidate));
        if (distance >= 0 && distance < least) {
          least = distance;
          nearest = candidate;
          if (distance == 0) {
            break;
          }
        }
      }
    }
    return Optional.ofNullable(nearest);
  }

  /** {@code did you mean "x"?}, or the empty text. */
  public static String question(String word, Collection<String> candidates) {
    return find(word, candidates).map(near -> "did you mean \"" + near + "\"?").orElse("");
  }

  private static String normal(String word) {
    return word.toLowerCase(Locale.ROOT).replace('-', ' ').replace('_', ' ').strip();
  }
}
