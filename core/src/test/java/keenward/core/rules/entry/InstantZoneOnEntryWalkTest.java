package keenward.core.rules.entry;

import static keenward.core.plan.ArmingMode.NIGHT;
import static keenward.core.plan.DeviceKind.MOTION;
import static keenward.core.plan.ZoneResponse.ENTRY_EXIT;
import static keenward.core.plan.ZoneResponse.FOLLOWER;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.plan.ZoneResponse.PERIMETER;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import keenward.core.building.walking.BakeryLikeSite;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class InstantZoneOnEntryWalkTest {

  private final InstantZoneOnEntryWalk rule = new InstantZoneOnEntryWalk();

  @Test
  void findsRoomsAndDoorsOnTheWayAndNoneBeside() {
    PlanBuilder plan =
        BakeryLikeSite.plan()
            .zone(2, "Passage motion", INSTANT, zone -> zone.device("Passage motion"))
            .zone(3, "Office door", PERIMETER, zone -> zone.device("Office contact"))
            .zone(4, "Office motion", INSTANT, zone -> zone.device("Office motion"))
            .zone(5, "Store motion", INSTANT, zone -> zone.device("Store motion"));

    assertThat(findings(rule, plan))
        .containsExactly(
            "error at zones / 2 / response: Zone 2 'Passage motion' alarms at once, and the way from"
                + " 'Yard door' to 'Office keypad' leads through room 'Passage'.",
            "error at zones / 3 / response: Zone 3 'Office door' alarms at once, and the way from"
                + " 'Yard door' to 'Office keypad' leads through door 'Office door'.",
            "error at zones / 4 / response: Zone 4 'Office motion' alarms at once, and the way from"
                + " 'Yard door' to 'Office keypad' leads through room 'Office'.");
    assertThat(run(rule, plan).findings().getFirst().involved().openings())
        .containsExactly("Yard door");
  }

  @Test
  void passesFollowersZonesOfAnotherModeAndZonesWithAReason() {
    PlanBuilder plan =
        BakeryLikeSite.plan()
            .zone(2, "Passage", FOLLOWER, zone -> zone.device("Passage motion").follows(1))
            .zone(3, "Office", INSTANT, zone -> zone.device("Office motion").liveIn(NIGHT))
            .zone(
                4,
                "Door",
                PERIMETER,
                zone -> zone.device("Office contact").reason("magnet removed"));

    assertThat(findings(rule, plan)).isEmpty();
    assertThat(run(rule, plan).judgedCount()).isEqualTo(1);
  }

  @Test
  void findsAFollowerThatIsBoundToAnotherDoor() {
    PlanBuilder plan =
        BakeryLikeSite.plan()
            .zone(2, "Passage", FOLLOWER, zone -> zone.device("Passage motion").follows(9))
            .zone(9, "Side", ENTRY_EXIT, zone -> zone.device("Yard contact"));

    assertThat(findings(rule, plan))
        .containsExactly(
            "error at zones / 2 / follows: Zone 2 'Passage' follows zone 9 only and alarms at once"
                + " otherwise, and the way from 'Yard door' to 'Office keypad' leads through room"
                + " 'Passage'.");
  }

  @Test
  void leavesZonesOfAPartitionThatIsNotTiedToAnotherRule() {
    PlanBuilder plan =
        BakeryLikeSite.plan()
            .partition("Shop", 1)
            .partition("Flat", 2)
            .zone(2, "Passage", INSTANT, zone -> zone.device("Passage motion").in("Flat"));

    assertThat(findings(rule, plan)).isEmpty();
  }

  @Test
  void findsAZoneOfThePartitionThatAnEntryHallIsCommonTo() {
    PlanBuilder plan =
        BakeryLikeSite.plan()
            .commonArea("Hall", 1, List.of("Shop", "Flat"))
            .partition("Shop", 2)
            .partition("Flat", 3)
            .zone(2, "Passage", INSTANT, zone -> zone.device("Passage motion").in("Flat"));

    assertThat(findings(rule, plan)).hasSize(1);
  }

  @Test
  void takesAnyClearWalkToEquallyNearKeypads() {
    PlanBuilder plan =
        BakeryLikeSite.plan()
            .device("Store keypad", DeviceKind.KEYPAD, device -> device.room("Store"))
            .zone(2, "Office motion", INSTANT, zone -> zone.device("Office motion"));

    assertThat(findings(rule, plan)).isEmpty();
  }

  @Test
  void doesNotAssessWithoutRoomsNorZonesThatMayBeAnywhere() {
    assertThat(notAssessed(rule, PlanBuilder.site().zone(1, "Door", ENTRY_EXIT)))
        .singleElement()
        .asString()
        .startsWith("floors: whether a zone alarms at once on the way in: the ways in, since");
    assertThat(
            notAssessed(
                rule,
                BakeryLikeSite.plan().zone(7, "Somewhere", INSTANT, zone -> zone.kind(MOTION))))
        .containsExactly(
            "zones / 7: whether zone 7 'Somewhere' is on a way in, since the plan does not say where;"
                + " add: room: Hall");
  }
}
