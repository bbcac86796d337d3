package keenward.core.rules.users;

import static keenward.core.plan.UserRole.DURESS;
import static keenward.core.plan.UserRole.MASTER;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class PartitionWithoutDuressUserTest {

  private final PartitionWithoutDuressUser rule = new PartitionWithoutDuressUser();

  private static PlanBuilder site() {
    return PlanBuilder.site()
        .partition("Shop", 1)
        .partition("Flat", 2)
        .partition("Yard", 3)
        .user(1, "Ines", MASTER, List.of("Shop", "Flat"));
  }

  @Test
  void findsAPartitionThatTheDuressUserIsRefused() {
    assertThat(findings(rule, site().user(5, "Threat", DURESS, List.of("Shop"))))
        .containsExactly(
            "warning at users / 5 / partitions: No duress user may use 'Flat', where others disarm;"
                + " duress user 5 may use 'Shop' only.");
  }

  @Test
  void passesDuressWhereverPeopleDisarmAndASiteWithoutAny() {
    assertThat(findings(rule, site().user(5, "Threat", DURESS, List.of("Shop", "Flat")))).isEmpty();
    assertThat(run(rule, site()).judgedCount()).isZero();
  }
}
