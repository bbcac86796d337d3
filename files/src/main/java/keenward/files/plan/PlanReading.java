package keenward.files.plan;

import java.util.List;
import java.util.Optional;
import keenward.core.plan.SitePlan;
import keenward.files.Problem;

/**
 * What became of a plan file: either a plan, or problems.
 *
 * @param plan the plan; empty when there is any problem
 * @param problems every fault found, in the order of the file
 * @param positions places of the plan in the file, also when there is no plan
 */
public record PlanReading(
    Optional<SitePlan> plan, List<Problem> problems, PlanPositions positions) {

  public PlanReading {
    problems = List.copyOf(problems);
    if (plan.isPresent() != problems.isEmpty()) {
      throw new IllegalArgumentException("a reading gives either a plan or problems");
    }
  }
}
