package keenward.core.electrical;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;

/**
 * Every sum of the power of a site, without verdicts.
 *
 * @param supplies one budget a supply, in the order of the plan
 * @param networks cables that hang together
 * @param cableRuns voltage at each device at the end of known cables
 * @param sharedPlaces places that cables of several supplies reach, where they meet first
 * @param notAssessed what could not be computed for the site as a whole or for its cables
 */
public record PowerAssessment(
    List<PowerBudget> supplies,
    List<CableNetwork> networks,
    List<CableRun> cableRuns,
    Map<String, Shared> sharedPlaces,
    List<MissingFact> notAssessed) {

  /**
   * Supplies that feed one place.
   *
   * @param supplies their names
   * @param cable name of a cable to the place
   */
  public record Shared(List<String> supplies, String cable) {}

  /** Copies the lists. */
  public PowerAssessment {
    supplies = List.copyOf(supplies);
    networks = List.copyOf(networks);
    cableRuns = List.copyOf(cableRuns);
    sharedPlaces = Collections.unmodifiableMap(new LinkedHashMap<>(sharedPlaces));
    notAssessed = List.copyOf(notAssessed);
  }

  /** The networks of each supply that has any, by its name. */
  public Map<String, List<CableNetwork>> networksBySupply() {
    Map<String, List<CableNetwork>> bySupply = new LinkedHashMap<>();
    for (CableNetwork network : networks) {
      bySupply.computeIfAbsent(network.supply(), name -> new ArrayList<>()).add(network);
    }
    return bySupply;
  }

  /** Assesses a plan. */
  public static PowerAssessment of(SitePlan plan) {
    if (plan.supplies().isEmpty()) {
      return new PowerAssessment(
          List.of(),
          List.of(),
          List.of(),
          Map.of(),
          List.of(
              new MissingFact(
                  PlanPath.of("supplies"),
                  "standby batteries, since the plan has no supply",
                  "supplies: { Main: { battery: { capacity: ... Ah } } }")));
    }
    Feeds feeds = Feeds.of(plan);
    List<PowerBudget> budgets =
        plan.supplies().stream().map(supply -> PowerBudgets.of(plan, supply, feeds)).toList();
    CableNetworks.Found cables = CableNetworks.of(plan, budgets);
    List<MissingFact> open = new ArrayList<>(feeds.notAssessed());
    open.addAll(cables.notAssessed());
    return new PowerAssessment(budgets, cables.networks(), cables.runs(), cables.shared(), open);
  }
}
