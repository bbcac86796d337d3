package keenward.core.rules.entry;

import static keenward.core.plan.DeviceKind.CONTACT;
import static keenward.core.plan.DeviceKind.FOB;
import static keenward.core.plan.DeviceKind.KEYPAD;
import static keenward.core.plan.DeviceKind.KEY_SWITCH_CONTACT;
import static keenward.core.plan.OpeningKind.DOOR;
import static keenward.core.plan.OpeningKind.ROLLER_SHUTTER;
import static keenward.core.plan.RoomUse.GARAGE;
import static keenward.core.plan.RoomUse.HALL;
import static keenward.core.plan.ZoneResponse.ENTRY_EXIT;
import static keenward.core.plan.ZoneResponse.KEY_SWITCH;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.building.walking.BakeryLikeSite;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class NoKeypadBehindEntryDoorTest {

  private final NoKeypadBehindEntryDoor rule = new NoKeypadBehindEntryDoor();

  private static PlanBuilder garage() {
    return PlanBuilder.site()
        .floor(
            "Ground",
            floor ->
                floor
                    .room("Hall", HALL, 0, 0, 3, 4)
                    .room("Garage", GARAGE, 3, 0, 8, 4)
                    .opening("Front door", DOOR, "Hall", "outside", 1)
                    .opening("Garage door", ROLLER_SHUTTER, "Garage", "outside", 1))
        .device("Garage contact", CONTACT, device -> device.on("Garage door"))
        .device("Hall keypad", KEYPAD, device -> device.room("Hall"))
        .zone(2, "Garage door", ENTRY_EXIT, zone -> zone.device("Garage contact"));
  }

  @Test
  void findsAGarageWithoutAWayToTheKeypad() {
    assertThat(findings(rule, garage()))
        .containsExactly(
            "error at zones / 2: From 'Garage door', the entry of zone 2 'Garage door', no keypad of"
                + " 'System' can be reached.");
  }

  @Test
  void passesAFobAKeySwitchAndADoorWithAWay() {
    assertThat(findings(rule, garage().device("Fob", FOB))).isEmpty();
    assertThat(
            findings(
                rule, garage().zone(3, "Key", KEY_SWITCH, zone -> zone.kind(KEY_SWITCH_CONTACT))))
        .isEmpty();
    assertThat(findings(rule, BakeryLikeSite.plan())).isEmpty();
    assertThat(run(rule, BakeryLikeSite.plan()).judgedCount()).isEqualTo(1);
  }
}
