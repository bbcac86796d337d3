package keenward.core.rules.partitions;

import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class CommonAreaOfOneTest {

  private final CommonAreaOfOne rule = new CommonAreaOfOne();

  @Test
  void findsAreasTiedToOneToThemselvesAndToEachOther() {
    PlanBuilder plan =
        PlanBuilder.site()
            .partition("Shop", 1)
            .partition("Flat", 2)
            .commonArea("Hall", 3, List.of("Shop"))
            .commonArea("Yard", 4, List.of("Yard", "Shop"))
            .commonArea("Gate", 5, List.of("Hall", "Flat"));

    assertThat(findings(rule, plan))
        .containsExactly(
            "warning at partitions / Hall / common to: Partition 'Hall' is common to 'Shop' alone.",
            "warning at partitions / Yard / common to: Partition 'Yard' is common to itself.",
            "warning at partitions / Gate / common to: Partition 'Gate' is common to 'Hall', which is a"
                + " common area itself.");
  }

  @Test
  void passesAnAreaOfTwoAndIgnoresOrdinaryPartitions() {
    PlanBuilder plan =
        PlanBuilder.site()
            .partition("Shop", 1)
            .partition("Flat", 2)
            .commonArea("Hall", 3, List.of("Shop", "Flat"));

    assertThat(findings(rule, plan)).isEmpty();
    assertThat(run(rule, plan).judgedCount()).isEqualTo(1);
  }
}
