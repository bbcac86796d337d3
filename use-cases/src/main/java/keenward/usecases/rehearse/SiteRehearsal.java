package keenward.usecases.rehearse;

import java.util.List;
import keenward.core.rehearsal.planned.PlannedSystem;

/**
 * What a site's planned system does.
 *
 * @param system the system as modelled, with what was assumed where the plan leaves it open
 * @param scenarios the scenarios
 */
public record SiteRehearsal(PlannedSystem system, List<RehearsedScenario> scenarios) {
  public SiteRehearsal {
    scenarios = List.copyOf(scenarios);
  }
}
