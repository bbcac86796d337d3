package keenward.core.rehearsal.planned;

import java.util.ArrayList;
import java.util.List;
import keenward.core.rehearsal.SystemModel;

/**
 * The system that a plan describes.
 *
 * @param model the system; partitions, zones, users and keypads stand in the order of the plan,
 *     areas that only zones share after the partitions
 * @param assumptions what the plan leaves open and what was taken
 */
public record PlannedSystem(SystemModel model, List<Assumption> assumptions) {

  public PlannedSystem {
    assumptions = List.copyOf(assumptions);
  }

  /** The same system with further assumptions. */
  public PlannedSystem assuming(List<Assumption> more) {
    List<Assumption> all = new ArrayList<>(assumptions);
    all.addAll(more);
    return new PlannedSystem(model, all);
  }
}
