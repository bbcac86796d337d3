package keenward.core.rules.timing;

import static keenward.core.plan.DeviceKind.CONTACT;
import static keenward.core.plan.DeviceKind.KEYPAD;
import static keenward.core.plan.OpeningKind.DOOR;
import static keenward.core.plan.RoomUse.HALL;
import static keenward.core.plan.ZoneResponse.ENTRY_EXIT;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.HabitAction;
import keenward.core.plan.Pace;
import keenward.core.plan.PlanBuilder;
import keenward.core.plan.Standard;
import org.junit.jupiter.api.Test;

class DelaysAgainstWalksTest {

  /** A hall 30 m long, its door at the south end, the keypad so far from it. */
  private static PlanBuilder hall(double keypadMetres, HabitAction does) {
    return PlanBuilder.site()
        .person("Nan", Pace.SLOW, PlanBuilder.habit("walks", does, "Door", "Keypad"))
        .floor(
            "Ground",
            floor ->
                floor.room("Hall", HALL, 0, 0, 2, 30).opening("Door", DOOR, "Hall", "outside", 1))
        .device("Contact", CONTACT, device -> device.room("Hall").on("Door"))
        .device("Keypad", KEYPAD, device -> device.room("Hall").at(1, keypadMetres))
        .zone(1, "Door", ENTRY_EXIT, zone -> zone.device("Contact"));
  }

  /**
   * 28 m at the slow 5th percentile, 1.295 - 0.375 x 1.6449 / 1.0364 = 0.700 m/s, take 40 s, the
   * door 5 s more.
   */
  @Test
  void exitTimeIsComparedWithTheWalkOut() {
    PlanBuilder plan = hall(28, HabitAction.ARM_AWAY).panel(panel -> panel.exitTime("45 s"));

    assertThat(findings(new ExitTimeTooShort(), plan))
        .containsExactly(
            "warning at panel / exit time: From 'Keypad' out by 'Door' it is 28.0 m. With the door, 95"
                + " of 100 people of slow pace need up to 46 s (Nan), and the exit time is 45 s.");
    assertThat(
            findings(
                new ExitTimeTooShort(),
                hall(28, HabitAction.ARM_AWAY).panel(panel -> panel.exitTime("46 s"))))
        .isEmpty();
  }

  @Test
  void entryDelayIsComparedWithTheSlowestWalkIn() {
    EntryDelayLongerThanNeeded rule = new EntryDelayLongerThanNeeded();
    PlanBuilder plan = hall(2, HabitAction.DISARM).panel(panel -> panel.entryDelay(1, "60 s"));

    assertThat(findings(rule, plan))
        .singleElement()
        .asString()
        .startsWith(
            "advice at panel / entry delays / 1: Entry delay 1 is 60 s. The slowest way in, from 'Door'"
                + " to 'Keypad', takes 95 of 100 people of slow pace up to ");
    assertThat(findings(rule, hall(2, HabitAction.DISARM))).isEmpty();
    assertThat(
            findings(
                rule, hall(20, HabitAction.DISARM).panel(panel -> panel.entryDelay(1, "60 s"))))
        .isEmpty();
  }

  @Test
  void theShortestDelayThatARegimeAllowsIsLetPass() {
    EntryDelayLongerThanNeeded rule = new EntryDelayLongerThanNeeded();
    PlanBuilder plan =
        hall(2, HabitAction.DISARM)
            .regime(Standard.CP_01)
            .panel(panel -> panel.entryDelay(1, "30 s"));

    assertThat(findings(rule, plan)).isEmpty();
    assertThat(run(rule, plan).judgedCount()).isEqualTo(1);
  }
}
