package keenward.core.rules.reporting;

import static keenward.core.plan.SignalFormat.DC_03;
import static keenward.core.plan.ZoneResponse.FIRE;
import static keenward.core.plan.ZoneResponse.HOLD_UP;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

/** Codes and groups are those of DC-05 (1999.09), appendix C. */
class UnfittingEventTest {

  private final UnfittingEvent rule = new UnfittingEvent();

  @Test
  void findsAFireThatArrivesAsABurglary() {
    assertThat(findings(rule, PlanBuilder.site().zone(3, "Smoke", FIRE, zone -> zone.event(130))))
        .containsExactly(
            "error at zones / 3 / event: Zone 3 'Smoke' has response fire and sends event 130, 'burglary,"
                + " type not stated' (burglary alarm).");
  }

  @Test
  void findsACodeWhoseNumberIsAUser() {
    assertThat(findings(rule, PlanBuilder.site().zone(3, "Bar", HOLD_UP, zone -> zone.event(121))))
        .hasSize(1);
  }

  @Test
  void warnsOfACodeOutsideTheTable() {
    assertThat(findings(rule, PlanBuilder.site().zone(3, "Bar", HOLD_UP, zone -> zone.event(999))))
        .containsExactly(
            "warning at zones / 3 / event: Zone 3 'Bar' sends event 999, which DC-05 (1999.09), event"
                + " codes, does not list.");
  }

  @Test
  void passesAFittingCodeAReasonAndAnotherFormat() {
    assertThat(findings(rule, PlanBuilder.site().zone(3, "Bar", HOLD_UP, zone -> zone.event(122))))
        .isEmpty();
    assertThat(
            findings(
                rule,
                PlanBuilder.site()
                    .zone(3, "Bar", INSTANT, zone -> zone.event(140).reason("centre wants it"))))
        .isEmpty();
    PlanBuilder letters =
        PlanBuilder.site()
            .monitored("123", DC_03, List.of())
            .zone(3, "Smoke", FIRE, zone -> zone.event(130));
    assertThat(run(rule, letters).judgedCount()).isZero();
  }
}
