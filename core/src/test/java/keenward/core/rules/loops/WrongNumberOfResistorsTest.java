package keenward.core.rules.loops;

import static keenward.core.plan.LoopWiring.DOUBLE_RESISTOR;
import static keenward.core.plan.LoopWiring.NONE;
import static keenward.core.plan.LoopWiring.SINGLE_RESISTOR;
import static keenward.core.plan.LoopWiring.TRIPLE_RESISTOR;
import static keenward.core.plan.ZoneResponse.PERIMETER;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class WrongNumberOfResistorsTest {

  private final WrongNumberOfResistors rule = new WrongNumberOfResistors();

  @Test
  void findsTooFewAndTooMany() {
    PlanBuilder plan =
        PlanBuilder.site()
            .zone(1, "Door", PERIMETER, zone -> zone.wiring(DOUBLE_RESISTOR, "4.7 kohm"))
            .zone(2, "Hatch", PERIMETER, zone -> zone.wiring(NONE, "1 kohm", "2.2 kohm"));

    assertThat(findings(rule, plan))
        .containsExactly(
            "error at zones / 1 / resistors: Zone 1 'Door' is wired as double resistor, which takes"
                + " 2 resistors, and the plan gives 1 (4.7 kohm).",
            "error at zones / 2 / resistors: Zone 2 'Hatch' is wired as none, which takes 0"
                + " resistors, and the plan gives 2 (1 kohm and 2.2 kohm).");
  }

  @Test
  void passesLoopsWithTheirResistors() {
    PlanBuilder plan =
        PlanBuilder.site()
            .zone(1, "A", PERIMETER, zone -> zone.wiring(NONE))
            .zone(2, "B", PERIMETER, zone -> zone.wiring(SINGLE_RESISTOR, "5.6 kohm"))
            .zone(3, "C", PERIMETER, zone -> zone.wiring(DOUBLE_RESISTOR, "1 kohm", "1 kohm"))
            .zone(
                4,
                "D",
                PERIMETER,
                zone -> zone.wiring(TRIPLE_RESISTOR, "1 kohm", "1 kohm", "3 kohm"));

    assertThat(findings(rule, plan)).isEmpty();
    assertThat(run(rule, plan).judgedCount()).isEqualTo(4);
  }

  @Test
  void doesNotAssessALoopWithoutValuesOrWiring() {
    PlanBuilder plan =
        PlanBuilder.site().zone(1, "Door", PERIMETER, zone -> zone.wiring(TRIPLE_RESISTOR));

    assertThat(notAssessed(rule, plan))
        .containsExactly(
            "zones / 1 / resistors: Zone 1 'Door' is wired as triple resistor, and the plan gives no"
                + " values; add: resistors: [4.7 kohm, 4.7 kohm, 4.7 kohm]");
    assertThat(run(rule, plan).judgedCount()).isZero();
  }
}
