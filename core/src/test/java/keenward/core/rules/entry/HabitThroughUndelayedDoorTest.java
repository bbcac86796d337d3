package keenward.core.rules.entry;

import static keenward.core.plan.HabitAction.ARM_AWAY;
import static keenward.core.plan.HabitAction.DISARM;
import static keenward.core.plan.ZoneResponse.PERIMETER;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.building.walking.BakeryLikeSite;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class HabitThroughUndelayedDoorTest {

  private final HabitThroughUndelayedDoor rule = new HabitThroughUndelayedDoor();

  @Test
  void findsADoorWhoseZoneAlarmsAtOnceAndOneThatNothingWatches() {
    PlanBuilder plan =
        BakeryLikeSite.plan()
            .person(
                "Bo",
                PlanBuilder.habit("in", DISARM, "Office door", "Office keypad"),
                PlanBuilder.habit("late", DISARM, "Store door", "Office keypad"))
            .zone(2, "Office door", PERIMETER, zone -> zone.device("Office contact"));

    // Both inner doors open on the passage, where no entry-exit zone has a motion detector.
    assertThat(findings(rule, plan))
        .containsExactly(
            "error at people / Bo / habits / in / through: Bo comes in through 'Office door' ('in'),"
                + " which zone 2 'Office door' watches with response perimeter, so that no entry delay"
                + " starts.",
            "error at people / Bo / habits / late / through: Bo comes in through 'Store door' ('late'),"
                + " which no zone watches, so that no entry delay starts.");
  }

  @Test
  void passesTheDelayedDoorAndLeavesArmingAlone() {
    PlanBuilder plan =
        BakeryLikeSite.plan()
            .person(
                "Bo",
                PlanBuilder.habit("in", DISARM, "Yard door", "Office keypad"),
                PlanBuilder.habit("out", ARM_AWAY, "Store door", "Office keypad"));

    assertThat(findings(rule, plan)).isEmpty();
    assertThat(run(rule, plan).judgedCount()).isEqualTo(1);
  }

  @Test
  void doesNotAssessWhereAPlacelessZoneMayBeThatDoor() {
    PlanBuilder plan =
        BakeryLikeSite.plan()
            .person("Bo", PlanBuilder.habit("late", DISARM, "Store door", "Office keypad"))
            .zone(7, "Some door", PERIMETER);

    assertThat(findings(rule, plan)).isEmpty();
    assertThat(notAssessed(rule, plan)).hasSize(1);
  }
}
