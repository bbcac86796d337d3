package keenward.core.rules.loops;

import static keenward.core.plan.LoopWiring.DOUBLE_RESISTOR;
import static keenward.core.plan.LoopWiring.TRIPLE_RESISTOR;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.LoopWiring;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class LoopStatesTooCloseTest {

  private final LoopStatesTooClose rule = new LoopStatesTooClose();

  private static PlanBuilder loop(LoopWiring wiring, String... resistors) {
    return PlanBuilder.site().zone(1, "Store", INSTANT, zone -> zone.wiring(wiring, resistors));
  }

  @Test
  void findsAnAlarmThatReadsAsAFault() {
    assertThat(findings(rule, loop(TRIPLE_RESISTOR, "1 kohm", "1 kohm", "1 kohm")))
        .containsExactly(
            "error at zones / 1 / resistors: Zone 1 'Store' reads 2000 ohm in alarm and 2000 ohm in"
                + " fault, which is less than 20 % apart.");
  }

  @Test
  void findsARestThatReadsAsAnAlarm() {
    assertThat(findings(rule, loop(DOUBLE_RESISTOR, "10 kohm", "1 kohm"))).hasSize(1);
  }

  /**
   * 1.00 k, 1.00 k and 3.01 k: rest 1000, alarm 2000, fault 4010, both 5010 ohm, all gaps over 20 %
   * (computed).
   */
  @Test
  void passesTheUsualTripleAndExactlyAFifth() {
    assertThat(findings(rule, loop(TRIPLE_RESISTOR, "1 kohm", "1 kohm", "3.01 kohm"))).isEmpty();
    assertThat(findings(rule, loop(DOUBLE_RESISTOR, "1 kohm", "0.2 kohm"))).isEmpty();
    assertThat(findings(rule, loop(DOUBLE_RESISTOR, "1 kohm", "199 ohm"))).hasSize(1);
  }

  @Test
  void judgesNoLoopWithAnotherNumberOfResistors() {
    assertThat(run(rule, loop(TRIPLE_RESISTOR, "1 kohm")).judgedCount()).isZero();
  }
}
