package keenward.files.yaml;

import java.util.List;
import java.util.Optional;
import keenward.files.Problem;

/**
 * What became of a file.
 *
 * @param document the tree, also when there are problems that leave the rest readable
 * @param problems in the order of the file; empty when all is well, and then there is a document
 */
public record YamlReading(Optional<YamlDocument> document, List<Problem> problems) {
  public YamlReading {
    problems = List.copyOf(problems);
    if (document.isEmpty() && problems.isEmpty()) {
      throw new IllegalArgumentException("a file without a tree has a problem");
    }
  }
}
