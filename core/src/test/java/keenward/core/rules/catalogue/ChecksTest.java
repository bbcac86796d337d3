package keenward.core.rules.catalogue;

import static keenward.core.plan.DeviceKind.CONTACT;
import static keenward.core.plan.LoopWiring.DOUBLE_RESISTOR;
import static keenward.core.plan.ZoneResponse.PERIMETER;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import keenward.core.plan.SitePlan;
import keenward.core.rules.CheckInput;
import keenward.core.rules.CheckResult;
import keenward.core.rules.Finding;
import keenward.core.rules.RuleOutcome;
import org.junit.jupiter.api.Test;

class ChecksTest {

  @Test
  void ordersFindingsOfOneSeverityByPlace() {
    PlanBuilder plan = PlanBuilder.site();
    for (int number = 11; number > 0; number -= 3) {
      plan.zone(number, "Z" + number, PERIMETER, zone -> zone.wiring(DOUBLE_RESISTOR, "1 kohm"));
    }

    CheckResult result = Checks.run(CheckInput.of(plan.build()));

    assertThat(result.findings().stream().filter(finding -> finding.code().equals("LOP-01")))
        .extracting(Finding::place)
        .extracting(Object::toString)
        .containsExactly(
            "zones / 2 / resistors",
            "zones / 5 / resistors",
            "zones / 8 / resistors",
            "zones / 11 / resistors");
    assertThat(result.findings()).extracting(Finding::severity).isSorted();
    assertThat(result.hasErrors()).isTrue();
  }

  @Test
  void givesTheSameResultForTheSamePlan() {
    SitePlan plan =
        PlanBuilder.site()
            .device("Contact", CONTACT)
            .zone(1, "Left", PERIMETER, zone -> zone.device("Contact"))
            .zone(2, "Right", PERIMETER, zone -> zone.device("Contact"))
            .build();

    assertThat(Checks.run(CheckInput.of(plan))).isEqualTo(Checks.run(CheckInput.of(plan)));
  }

  @Test
  void tellsAPassFromHavingNothingToJudge() {
    SitePlan plan =
        PlanBuilder.site()
            .device("Contact", CONTACT)
            .zone(1, "Left", PERIMETER, zone -> zone.device("Contact"))
            .build();

    CheckResult result = Checks.run(CheckInput.of(plan));

    assertThat(result.passed()).extracting(RuleOutcome::code).contains("ADR-01");
    assertThat(result.outcomes())
        .filteredOn(RuleOutcome::hadNothingToJudge)
        .extracting(RuleOutcome::code)
        .contains("LOP-01");
    assertThat(result.outcomes()).hasSameSizeAs(RuleRegistry.all());
  }
}
