package keenward.files.plan;

import java.util.List;
import java.util.Optional;
import keenward.core.plan.SitePlan;
import keenward.files.Problem;
import keenward.files.shape.Fields;
import keenward.files.shape.ReadContext;
import keenward.files.shape.ShapeReader;
import keenward.files.yaml.YamlDocument;
import keenward.files.yaml.YamlReader;
import keenward.files.yaml.YamlReading;

/** Reads site plan files. */
public final class SitePlanReader {

  private SitePlanReader() {}

  /**
   * Reads a plan. Never throws for what the bytes hold; every fault of the file is found in one
   * run.
   *
   * @param fileName name to print in problems
   */
  public static PlanReading read(String fileName, byte[] bytes) {
    YamlReading yaml = YamlReader.read(fileName, bytes);
    PlanPositions positions = new PlanPositions(fileName, yaml.document());
    return yaml.document()
        .map(document -> read(document, yaml.problems(), positions))
        .orElseGet(() -> new PlanReading(Optional.empty(), yaml.problems(), positions));
  }

  private static PlanReading read(
      YamlDocument document, List<Problem> ofTheText, PlanPositions positions) {
    ShapeReader.Result<Fields> result = ShapeReader.read(document, SitePlanShape.ROOT);
    ReadContext context = result.context();
    result.value().ifPresent(root -> crossCheck(new PlanDraft(document, root, context)));
    List<Problem> problems = context.problemsAfter(ofTheText);
    Optional<SitePlan> plan =
        problems.isEmpty() ? result.value().map(SitePlanBinder::bind) : Optional.empty();
    return new PlanReading(plan, problems, positions);
  }

  private static void crossCheck(PlanDraft draft) {
    UniqueNames.check(draft);
    FloorFaults.check(draft);
    DeviceFaults.check(draft);
    PartitionFaults.check(draft);
    ZoneFaults.check(draft);
    PanelFaults.check(draft);
    CableFaults.check(draft);
  }
}
