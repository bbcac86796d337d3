package keenward.core.rules.reporting;

import static keenward.core.plan.SignalFormat.DC_03;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.rules.RuleCheck.findings;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class NumberTooLargeToSendTest {

  private final NumberTooLargeToSend rule = new NumberTooLargeToSend();

  @Test
  void findsAZoneNumberOfFourDigits() {
    assertThat(findings(rule, PlanBuilder.site().monitored("0471").zone(1000, "Far shed", INSTANT)))
        .singleElement()
        .asString()
        .contains("Zone number 1000", "up to 999");
  }

  @Test
  void passesTheLargestNumberAndSitesWhereItDoesNotMatter() {
    assertThat(findings(rule, PlanBuilder.site().monitored("0471").zone(999, "Shed", INSTANT)))
        .isEmpty();
    assertThat(findings(rule, PlanBuilder.site().zone(1000, "Shed", INSTANT))).isEmpty();
    assertThat(
            findings(
                rule,
                PlanBuilder.site().monitored("12", DC_03, List.of()).zone(1000, "Shed", INSTANT)))
        .isEmpty();
  }
}
