package keenward.usecases.site;

import java.nio.file.Path;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.files.plan.PlanPositions;

/**
 * A site plan and the file it was read from.
 *
 * @param path the file
 * @param sha256 hash of the file's bytes; papers and records name the plan by it
 * @param plan the plan
 * @param positions where in the file each thing is stated
 */
public record SiteFile(Path path, String sha256, SitePlan plan, PlanPositions positions) {

  private static final String ENDING = ".site.yaml";

  /**
   * Where something stands in the file, as {@code FILE:LINE:COLUMN}; the nearest thing above it
   * when it is not there.
   */
  public String place(PlanPath path) {
    return positions.of(path).toString();
  }

  /** A short name for folders and addresses: the file's name without its ending. */
  public String shortName() {
    Path name = path.getFileName();
    String text = name == null ? "site" : name.toString();
    if (text.endsWith(ENDING)) {
      return text.substring(0, text.length() - ENDING.length());
    }
    int dot = text.lastIndexOf('.');
    return dot > 0 ? text.substring(0, dot) : text;
  }
}
