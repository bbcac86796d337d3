package keenward.core.rules.arming;

import static keenward.core.plan.DeviceKind.KEYPAD;
import static keenward.core.plan.HabitAction.ARM_AWAY;
import static keenward.core.plan.HabitAction.ARM_NIGHT;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.plan.ZoneResponse.PERIMETER;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import keenward.core.plan.HabitAction;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class NothingLiveAtHomeTest {

  private final NothingLiveAtHome rule = new NothingLiveAtHome();

  private static PlanBuilder site(HabitAction action) {
    return PlanBuilder.site()
        .person("Tomas", PlanBuilder.habit("bed", action, "Door", "Landing keypad"))
        .device("Landing keypad", KEYPAD)
        .partition("Shop", 1, List.of("Shop keypad"))
        .partition("Flat", 2, List.of("Landing keypad"))
        .zone(1, "Shop window", PERIMETER, zone -> zone.in("Shop"))
        .zone(2, "Landing", INSTANT, zone -> zone.in("Flat"));
  }

  @Test
  void findsAPartitionWhereNothingIsLiveAtNight() {
    assertThat(findings(rule, site(ARM_NIGHT)))
        .containsExactly(
            "warning at people / Tomas / habits / bed: Tomas arms night ('bed'), and none of the"
                + " burglary zones of partition 'Flat' is live in night.");
  }

  @Test
  void passesAPartitionWithAPerimeter() {
    assertThat(
            findings(rule, site(ARM_NIGHT).zone(3, "Window", PERIMETER, zone -> zone.in("Flat"))))
        .isEmpty();
  }

  @Test
  void hasNothingToJudgeWhereNobodyArmsAtHome() {
    assertThat(run(rule, site(ARM_AWAY)).judgedCount()).isZero();
  }
}
