package keenward.files.panel;

import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.lint.LintFinding;
import keenward.core.dialogue.lint.LintReport;
import keenward.files.Problem;
import keenward.files.shape.Fields;
import keenward.files.shape.ShapeReader;
import keenward.files.yaml.ProblemList;
import keenward.files.yaml.YamlDocument;
import keenward.files.yaml.YamlReader;
import keenward.files.yaml.YamlReading;

/** Reads panel descriptions. */
public final class PanelDescriptionReader {
  private PanelDescriptionReader() {}

  /**
   * Reads a file's bytes; never throws for what they hold, and reports everything wrong in one go.
   */
  public static PanelReading read(String fileName, byte[] bytes) {
    YamlReading yaml = YamlReader.read(fileName, bytes);
    if (yaml.document().isEmpty()) {
      return new PanelReading(Optional.empty(), yaml.problems(), Optional.empty());
    }
    YamlDocument document = yaml.document().get();
    ShapeReader.Result<Fields> result = ShapeReader.read(document, PanelDescriptionShape.ROOT);
    Optional<PanelDescription> description =
        result
            .value()
            .flatMap(root -> new PanelBinder(new Faults(document, result.context())).bind(root));
    List<Problem> problems = result.context().problemsAfter(yaml.problems());
    return new PanelReading(
        problems.isEmpty() ? description : Optional.empty(), problems, yaml.document());
  }

  /**
   * The linter's findings as problems with their places in the file that the description came from.
   */
  public static List<Problem> problems(YamlDocument document, LintReport report) {
    ProblemList problems = new ProblemList(document.file());
    for (LintFinding finding : report.findings()) {
      problems.add(
          document.nearestPlace(finding.place()),
          finding.severity().word() + ": " + finding.what(),
          "a description that can be proved",
          finding.remedy());
    }
    return problems.inFileOrder();
  }
}
