package keenward.core.rules.reporting;

import static keenward.core.plan.SignalFormat.DC_03;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UnusableAccountTest {

  private final UnusableAccount rule = new UnusableAccount();

  @ParameterizedTest
  @ValueSource(strings = {"471", "04711", "04A1", "O471", "04 1", ""})
  void findsAccountsThatDc05CannotSend(String account) {
    assertThat(findings(rule, PlanBuilder.site().monitored(account)))
        .singleElement()
        .asString()
        .startsWith(
            "error at monitoring / account: Account '" + account + "' cannot be sent as dc-05");
  }

  @ParameterizedTest
  @ValueSource(strings = {"0471", "BCDF", "0000"})
  void passesFourDigitsWithoutA(String account) {
    assertThat(findings(rule, PlanBuilder.site().monitored(account))).isEmpty();
  }

  @Test
  void allowsOtherLengthsInAnotherFormat() {
    assertThat(findings(rule, PlanBuilder.site().monitored("12A", DC_03, List.of()))).isEmpty();
    assertThat(findings(rule, PlanBuilder.site().monitored("12", DC_03, List.of()))).hasSize(1);
  }

  @Test
  void doesNotAssessASiteWithoutAccount() {
    assertThat(notAssessed(rule, PlanBuilder.site()))
        .containsExactly(
            "monitoring: the monitoring account, since the plan gives none; add: monitoring: { account:"
                + " \"1234\", format: dc-05 }");
  }
}
