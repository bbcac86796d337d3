package keenward.files.plan;

import java.util.Optional;
import keenward.core.plan.PlanPath;
import keenward.files.QuotedText;
import keenward.files.yaml.Span;
import keenward.files.yaml.YamlDocument;

/** Where the places of a plan stand in its file. */
public final class PlanPositions {

  private final String file;
  private final Optional<YamlDocument> document;

  PlanPositions(String file, Optional<YamlDocument> document) {
    this.file = file;
    this.document = document;
  }

  /**
   * A place in the file.
   *
   * @param line from 1
   * @param column from 1, in code points
   */
  public record Position(String file, int line, int column) {

    /** {@code FILE:LINE:COLUMN}. */
    @Override
    public String toString() {
      return QuotedText.visible(file) + ":" + line + ":" + column;
    }
  }

  /** The position of a place of the plan, or of the nearest place above it that the file has. */
  public Position of(PlanPath path) {
    Span span =
        document
            .map(tree -> tree.nearestPlace(path.pointer()))
            .orElseGet(() -> new Span(0, 0, 1, 1));
    return new Position(file, span.line(), span.column());
  }

  /** The text and tree of the file; empty when it could not be read as YAML. */
  public Optional<YamlDocument> document() {
    return document;
  }
}
