package keenward.usecases.site;

import java.nio.file.Path;
import java.util.Optional;
import keenward.core.plan.SitePlan;
import keenward.files.plan.PlanReading;
import keenward.files.plan.SitePlanReader;

/** Reads site plans from files. */
public final class SiteFiles {

  private SiteFiles() {}

  /**
   * Reads a site plan.
   *
   * @throws BadInput with every fault of the file
   */
  public static SiteFile load(Path path) throws BadInput {
    byte[] bytes = InputBytes.read(path, "a site plan (*.site.yaml)");
    PlanReading reading = SitePlanReader.read(path.toString(), bytes);
    Optional<SitePlan> plan = reading.plan();
    if (plan.isEmpty()) {
      throw new BadInput(reading.problems());
    }
    return new SiteFile(path, InputBytes.sha256(bytes), plan.get(), reading.positions());
  }
}
