package keenward.core.rules.records;

import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class RowNotPlacedTest {

  private final RowNotPlaced rule = new RowNotPlaced();

  @Test
  void mentionsEveryRowThatIsLeft() {
    PlanBuilder plan =
        PlanBuilder.site()
            .unplaced("013;Corridor", "zone 13 is there already")
            .unplaced("x", "no number");

    assertThat(findings(rule, plan))
        .containsExactly(
            "warning at unplaced / 0: Row '013;Corridor' of an import has no place in the plan: zone 13 is"
                + " there already.",
            "warning at unplaced / 1: Row 'x' of an import has no place in the plan: no number.");
  }

  @Test
  void hasNothingToJudgeWithoutRows() {
    assertThat(run(rule, PlanBuilder.site()).judgedCount()).isZero();
  }
}
