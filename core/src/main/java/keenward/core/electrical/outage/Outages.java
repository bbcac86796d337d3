package keenward.core.electrical.outage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.electrical.PowerAssessment;
import keenward.core.electrical.PowerBudget;
import keenward.core.plan.MissingFact;
import keenward.core.plan.Settings;
import keenward.core.plan.SitePlan;

/**
 * A long mains failure for every supply, and how it recovers.
 *
 * @param outages one a supply of which the plan says enough, in the order of the plan
 * @param notAssessed supplies, and parts, of which it does not
 */
public record Outages(List<Outage> outages, List<MissingFact> notAssessed) {

  /** Copies the lists. */
  public Outages {
    outages = List.copyOf(outages);
    notAssessed = List.copyOf(notAssessed);
  }

  /** Reckons every supply of a plan. */
  public static Outages of(SitePlan plan, Settings settings, PowerAssessment power) {
    List<Outage> outages = new ArrayList<>();
    List<MissingFact> open = new ArrayList<>();
    for (PowerBudget budget : power.supplies()) {
      new OutageReckoning(plan, settings, power, budget, open).reckon().ifPresent(outages::add);
    }
    return new Outages(outages, open);
  }

  /** The outage of a supply. */
  public Optional<Outage> of(String supply) {
    return outages.stream().filter(each -> each.supply().equals(supply)).findFirst();
  }
}
