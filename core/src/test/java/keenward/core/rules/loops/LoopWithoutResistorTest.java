package keenward.core.rules.loops;

import static keenward.core.plan.LoopWiring.NONE;
import static keenward.core.plan.LoopWiring.SINGLE_RESISTOR;
import static keenward.core.plan.Standard.EN50131;
import static keenward.core.plan.Standard.UL1023;
import static keenward.core.plan.ZoneResponse.FIRE;
import static keenward.core.plan.ZoneResponse.HOLD_UP;
import static keenward.core.plan.ZoneResponse.PERIMETER;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class LoopWithoutResistorTest {

  private final LoopWithoutResistor rule = new LoopWithoutResistor();

  private static PlanBuilder door() {
    return PlanBuilder.site().zone(1, "Store door", PERIMETER, zone -> zone.wiring(NONE));
  }

  @Test
  void findsAPlainLoopAtGradeTwo() {
    assertThat(findings(rule, door().grade(EN50131, 2)))
        .containsExactly(
            "error at zones / 1 / wiring: Zone 1 'Store door' is wired without a resistor, and en50131"
                + " grade 2 needs a supervised loop.");
    assertThat(findings(rule, door().regime(UL1023))).hasSize(1);
  }

  @Test
  void passesAPlainLoopAtGradeOneAndASupervisedOneAtGradeTwo() {
    assertThat(findings(rule, door().grade(EN50131, 1))).isEmpty();
    PlanBuilder plan =
        PlanBuilder.site()
            .grade(EN50131, 2)
            .zone(1, "Door", PERIMETER, zone -> zone.wiring(SINGLE_RESISTOR, "1 kohm"));
    assertThat(findings(rule, plan)).isEmpty();
    assertThat(run(rule, plan).judgedCount()).isEqualTo(1);
  }

  @Test
  void findsAPlainLoopOfFireOrHoldUpUnderNoRegime() {
    PlanBuilder plan =
        PlanBuilder.site()
            .zone(1, "Smoke", FIRE, zone -> zone.wiring(NONE))
            .zone(2, "Button", HOLD_UP, zone -> zone.wiring(NONE));

    assertThat(findings(rule, plan)).hasSize(2);
  }
}
