package keenward.core.electrical;

import java.util.ArrayList;
import java.util.List;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;

/**
 * Every sum of the power of a site, without verdicts.
 *
 * @param supplies one budget a supply, in the order of the plan
 * @param cableRuns voltage at each device at the end of known cables
 * @param notAssessed what could not be computed for the site as a whole or for its cables
 */
public record PowerAssessment(
    List<PowerBudget> supplies, List<CableRun> cableRuns, List<MissingFact> notAssessed) {

  /** Copies the lists. */
  public PowerAssessment {
    supplies = List.copyOf(supplies);
    cableRuns = List.copyOf(cableRuns);
    notAssessed = List.copyOf(notAssessed);
  }

  /** Assesses a plan. */
  public static PowerAssessment of(SitePlan plan) {
    if (plan.supplies().isEmpty()) {
      return new PowerAssessment(
          List.of(),
          List.of(),
          List.of(
              new MissingFact(
                  PlanPath.of("supplies"),
                  "standby batteries, since the plan has no supply",
                  "supplies: { Main: { battery: { capacity: ... Ah } } }")));
    }
    Feeds feeds = Feeds.of(plan);
    List<PowerBudget> budgets =
        plan.supplies().stream().map(supply -> PowerBudgets.of(plan, supply, feeds)).toList();
    CableRuns.Found cables = CableRuns.of(plan, budgets);
    List<MissingFact> open = new ArrayList<>(feeds.notAssessed());
    open.addAll(cables.notAssessed());
    return new PowerAssessment(budgets, cables.runs(), open);
  }
}
