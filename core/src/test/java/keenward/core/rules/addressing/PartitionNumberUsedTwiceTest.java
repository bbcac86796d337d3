package keenward.core.rules.addressing;

import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class PartitionNumberUsedTwiceTest {

  private final PartitionNumberUsedTwice rule = new PartitionNumberUsedTwice();

  @Test
  void findsTheSecondOfTwo() {
    PlanBuilder plan = PlanBuilder.site().partition("Shop", 1).partition("Store", 2).partition("Flat", 1);

    assertThat(findings(rule, plan))
        .containsExactly("error at partitions / Flat / number: Partitions 'Shop' and 'Flat' both have number 1.");
  }

  @Test
  void passesNumbersOfTheirOwnAndIgnoresASiteWithoutPartitions() {
    assertThat(findings(rule, PlanBuilder.site().partition("Shop", 1).partition("Flat", 2))).isEmpty();
    assertThat(run(rule, PlanBuilder.site()).judgedCount()).isZero();
  }
}
