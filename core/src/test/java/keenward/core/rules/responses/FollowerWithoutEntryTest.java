package keenward.core.rules.responses;

import static keenward.core.plan.ZoneResponse.ENTRY_EXIT;
import static keenward.core.plan.ZoneResponse.FOLLOWER;
import static keenward.core.plan.ZoneResponse.PERIMETER;
import static keenward.core.rules.RuleCheck.findings;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class FollowerWithoutEntryTest {

  private final FollowerWithoutEntry rule = new FollowerWithoutEntry();

  @Test
  void findsAFollowerInAPartitionWithoutEntry() {
    PlanBuilder plan =
        PlanBuilder.site()
            .partition("Shop", 1)
            .partition("Flat", 2)
            .zone(1, "Door", ENTRY_EXIT, zone -> zone.in("Shop"))
            .zone(2, "Landing", FOLLOWER, zone -> zone.in("Flat"));

    assertThat(findings(rule, plan))
        .containsExactly(
            "warning at zones / 2 / response: Zone 2 'Landing' is a follower, and no zone of 'Flat'"
                + " starts an entry delay.");
  }

  @Test
  void passesTheEntryOfACommonArea() {
    PlanBuilder plan =
        PlanBuilder.site()
            .partition("Flat", 1)
            .partition("Shop", 2)
            .commonArea("Hall", 3, List.of("Flat", "Shop"))
            .zone(1, "Door", ENTRY_EXIT, zone -> zone.in("Hall"))
            .zone(2, "Landing", FOLLOWER, zone -> zone.in("Flat"));

    assertThat(findings(rule, plan)).isEmpty();
  }

  @Test
  void findsABindingToAZoneThatStartsNoDelay() {
    PlanBuilder plan =
        PlanBuilder.site()
            .zone(1, "Door", ENTRY_EXIT)
            .zone(2, "Window", PERIMETER)
            .zone(3, "Hall", FOLLOWER, zone -> zone.follows(1, 2));

    assertThat(findings(rule, plan))
        .containsExactly(
            "warning at zones / 3 / follows: Zone 3 'Hall' follows 2 'Window', where no entry delay"
                + " starts.");
  }

  @Test
  void passesAFollowerBoundToAnEntry() {
    PlanBuilder plan =
        PlanBuilder.site()
            .zone(1, "Door", ENTRY_EXIT)
            .zone(3, "Hall", FOLLOWER, zone -> zone.follows(1));

    assertThat(findings(rule, plan)).isEmpty();
  }
}
