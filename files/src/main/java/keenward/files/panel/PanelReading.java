package keenward.files.panel;

import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.description.PanelDescription;
import keenward.files.Problem;
import keenward.files.yaml.YamlDocument;

/**
 * What became of a panel description's file.
 *
 * @param description the description; empty when anything is wrong with the file
 * @param problems everything wrong with it, in the order of the file
 * @param document the file as a tree, to find places in; empty when it could not be read at all
 */
public record PanelReading(
    Optional<PanelDescription> description,
    List<Problem> problems,
    Optional<YamlDocument> document) {
  public PanelReading {
    problems = List.copyOf(problems);
  }
}
