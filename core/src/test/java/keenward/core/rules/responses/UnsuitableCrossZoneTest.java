package keenward.core.rules.responses;

import static keenward.core.plan.ZoneResponse.ENTRY_EXIT;
import static keenward.core.plan.ZoneResponse.FIRE;
import static keenward.core.plan.ZoneResponse.FOLLOWER;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class UnsuitableCrossZoneTest {

  private final UnsuitableCrossZone rule = new UnsuitableCrossZone();

  private static PlanBuilder plan(Integer... zones) {
    return PlanBuilder.site()
        .partition("Shop", 1)
        .partition("Store", 2)
        .panel(panel -> panel.crossZone("60 s", zones))
        .zone(1, "Door", ENTRY_EXIT)
        .zone(2, "Motion", INSTANT)
        .zone(3, "Hall", FOLLOWER)
        .zone(4, "Smoke", FIRE)
        .zone(5, "Rack", INSTANT, zone -> zone.in("Store"));
  }

  @Test
  void findsZonesThatMustNotWait() {
    assertThat(findings(rule, plan(1, 2, 4)))
        .containsExactly(
            "error at panel / cross zones / 0 / zones: Zone 1 'Door' has response entry-exit and stands"
                + " in a cross-zone group, where it waits for another zone.",
            "error at panel / cross zones / 0 / zones: Zone 4 'Smoke' has response fire and stands in a"
                + " cross-zone group, where it waits for another zone.");
  }

  @Test
  void findsAGroupOfOneZoneSaidTwice() {
    assertThat(findings(rule, plan(2, 2)))
        .containsExactly(
            "error at panel / cross zones / 0 / zones: The cross-zone group of 2 'Motion' has fewer than"
                + " 2 zones.");
  }

  @Test
  void findsZonesThatNeedNotBeArmedTogether() {
    assertThat(findings(rule, plan(2, 5)))
        .containsExactly(
            "error at panel / cross zones / 0 / zones: The cross-zone group of 2 'Motion' and 5 'Rack'"
                + " has zones of different partitions, which need not be armed together.");
  }

  @Test
  void passesAPairOfOnePartition() {
    assertThat(findings(rule, plan(2, 3))).isEmpty();
    assertThat(run(rule, plan(2, 3)).judgedCount()).isEqualTo(1);
  }
}
