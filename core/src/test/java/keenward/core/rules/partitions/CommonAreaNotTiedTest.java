package keenward.core.rules.partitions;

import static keenward.core.plan.ZoneResponse.FOLLOWER;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import keenward.core.building.walking.BakeryLikeSite;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class CommonAreaNotTiedTest {

  private final CommonAreaNotTied rule = new CommonAreaNotTied();

  @Test
  void findsAWayInThroughAnotherPartition() {
    PlanBuilder plan =
        BakeryLikeSite.plan()
            .partition("Office", 1)
            .partition("Works", 2)
            .zone(2, "Passage", FOLLOWER, zone -> zone.device("Passage motion").in("Works"))
            .zone(3, "Store", INSTANT, zone -> zone.device("Store motion").in("Works"));

    assertThat(findings(rule, plan))
        .containsExactly(
            "error at zones / 2 / partition: The way in to 'Office', from 'Yard door' to 'Office keypad',"
                + " leads through room 'Passage', and zone 2 'Passage' belongs to 'Works' only.");
  }

  @Test
  void passesACommonArea() {
    PlanBuilder plan =
        BakeryLikeSite.plan()
            .commonArea("Passage", 1, List.of("Office", "Works"))
            .partition("Office", 2)
            .partition("Works", 3)
            .zone(2, "Passage", FOLLOWER, zone -> zone.device("Passage motion").in("Passage"))
            .zone(3, "Office", FOLLOWER, zone -> zone.device("Office motion").in("Office"));

    assertThat(findings(rule, plan)).isEmpty();
    assertThat(run(rule, plan).judgedCount()).isEqualTo(1);
  }

  @Test
  void hasNothingToJudgeInASiteOfOnePartition() {
    assertThat(run(rule, BakeryLikeSite.plan()).judgedCount()).isZero();
  }
}
