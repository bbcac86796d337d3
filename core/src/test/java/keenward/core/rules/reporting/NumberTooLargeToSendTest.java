package keenward.core.rules.reporting;

import static keenward.core.plan.UserRole.MASTER;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class NumberTooLargeToSendTest {

  private final NumberTooLargeToSend rule = new NumberTooLargeToSend();

  @Test
  void findsZoneUserAndPartitionBeyondTheirFields() {
    PlanBuilder plan =
        PlanBuilder.site()
            .monitored("1234")
            .partition("Shop", 99)
            .partition("Flat", 100)
            .zone(999, "Last", INSTANT)
            .zone(1000, "Over", INSTANT)
            .user(1001, "Ines", MASTER);

    assertThat(findings(rule, plan))
        .containsExactly(
            "error at zones / 1000: Zone number 1000 does not fit into a DC-05 message, which goes up to 999.",
            "error at users / 1001: User number 1001 does not fit into a DC-05 message, which goes up to 999.",
            "error at partitions / Flat / number: Partition number 100 does not fit into a DC-05 message,"
                + " which goes up to 99.");
  }

  @Test
  void judgesNoSiteThatIsNotMonitored() {
    assertThat(run(rule, PlanBuilder.site().zone(1000, "Over", INSTANT)).judgedCount()).isZero();
  }
}
