package keenward.core.rules.capacity;

import static keenward.core.rules.RuleCheck.lines;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import keenward.core.dialogue.description.Capacity;
import keenward.core.plan.PlanBuilder;
import keenward.core.rules.CheckInput;
import keenward.core.rules.PanelOfTests;
import keenward.core.rules.Report;
import org.junit.jupiter.api.Test;

class SupplyBeyondPanelTest {

  private static final Capacity SMALL =
      new Capacity(
          Map.of(),
          Map.of(),
          OptionalInt.of(600),
          OptionalInt.of(400),
          List.of(7000, 12000),
          OptionalInt.empty());

  private final SupplyBeyondPanel rule = new SupplyBeyondPanel();

  private static PlanBuilder site(String rating, String charge, String battery) {
    return PlanBuilder.site()
        .panel(panel -> panel.supply("Main"))
        .supply("Main", supply -> supply.rating(rating).charge(charge).battery(battery));
  }

  private Report on(PlanBuilder plan) {
    return run(rule, CheckInput.of(plan.build()).withPanel(PanelOfTests.holding(SMALL)));
  }

  @Test
  void findsWhatThePanelDoesNotGive() {
    assertThat(lines(on(site("750 mA", "450 mA", "17 Ah"))))
        .containsExactly(
            "error at supplies / Main / rating: The plan gives the supply of 'Test panel' a rating of 750 mA,"
                + " and the panel has 600 mA.",
            "error at supplies / Main / charge current: The plan gives the supply of 'Test panel' a charging"
                + " current of 450 mA, and the panel has 400 mA.",
            "error at supplies / Main / battery: The plan gives 'Test panel' a battery of 17 Ah, and the panel"
                + " takes 7 Ah and 12 Ah.");
  }

  @Test
  void passesUpToWhatThePanelGives() {
    Report report = on(site("600 mA", "400 mA", "12 Ah"));
    assertThat(report.findings()).isEmpty();
    assertThat(report.judgedCount()).isEqualTo(3);
  }

  @Test
  void leavesASupplyThatIsNotThePanelsAlone() {
    Report report = on(PlanBuilder.site().supply("Spare", supply -> supply.rating("5000 mA")));
    assertThat(report.judgedCount()).isZero();
    assertThat(report.notAssessed()).isEmpty();
  }

  @Test
  void doesNotAssessWithoutADescription() {
    assertThat(notAssessed(rule, site("600 mA", "400 mA", "7 Ah"))).hasSize(1);
  }
}
