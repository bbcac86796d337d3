package keenward.core.rules.labels;

import static keenward.core.plan.ZoneResponse.PERIMETER;
import static keenward.core.rules.RuleCheck.findings;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class ZoneNameUsedTwiceTest {

  private final ZoneNameUsedTwice rule = new ZoneNameUsedTwice();

  @Test
  void findsNamesThatDifferOnlyInBlanksAndCase() {
    PlanBuilder plan =
        PlanBuilder.site().zone(1, "Store  window", PERIMETER).zone(2, "Store Window", PERIMETER);

    assertThat(findings(rule, plan))
        .containsExactly(
            "warning at zones / 2 / name: Zones 1 and 2 are both named 'Store Window'.");
  }

  @Test
  void passesNamesOfTheirOwn() {
    PlanBuilder plan =
        PlanBuilder.site().zone(1, "Store window", PERIMETER).zone(2, "Store windows", PERIMETER);

    assertThat(findings(rule, plan)).isEmpty();
  }
}
