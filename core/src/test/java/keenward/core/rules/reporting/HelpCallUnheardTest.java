package keenward.core.rules.reporting;

import static keenward.core.plan.UserRole.DURESS;
import static keenward.core.plan.ZoneResponse.HOLD_UP;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class HelpCallUnheardTest {

  private final HelpCallUnheard rule = new HelpCallUnheard();

  @Test
  void findsSilentCallsWithoutMonitoring() {
    PlanBuilder plan = PlanBuilder.site().zone(3, "Counter", HOLD_UP).user(5, "Threat", DURESS);

    assertThat(findings(rule, plan))
        .containsExactly(
            "warning at zones / 3 / response: Zone 3 'Counter' and duress user 5 'Threat' call for help in"
                + " silence, and the plan names no monitoring that would hear it.");
  }

  @Test
  void passesAMonitoredSiteAndACallThatSounds() {
    assertThat(findings(rule, PlanBuilder.site().monitored("1234").zone(3, "Counter", HOLD_UP)))
        .isEmpty();
    assertThat(
            run(rule, PlanBuilder.site().zone(3, "Counter", HOLD_UP, zone -> zone.silent(false)))
                .judgedCount())
        .isZero();
    assertThat(run(rule, PlanBuilder.site().zone(1, "Hall", INSTANT)).judgedCount()).isZero();
  }
}
