package keenward.core.rules.partitions;

import static keenward.core.plan.DeviceKind.KEYPAD;
import static keenward.core.plan.DeviceKind.SOUNDER;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.notAssessed;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import keenward.core.building.walking.BakeryLikeSite;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class KeypadInsideOtherPartitionTest {

  private final KeypadInsideOtherPartition rule = new KeypadInsideOtherPartition();

  private static PlanBuilder site(List<String> storeKeypads) {
    return BakeryLikeSite.plan()
        .partition("Office", 1, List.of("Office keypad"))
        .partition("Store", 2, storeKeypads)
        .zone(2, "Office motion", INSTANT, zone -> zone.device("Office motion").in("Office"))
        .zone(3, "Store motion", INSTANT, zone -> zone.device("Store motion").in("Store"));
  }

  @Test
  void findsAPartitionThatIsDisarmedInsideAnother() {
    assertThat(findings(rule, site(List.of("Office keypad"))))
        .containsExactly(
            "error at partitions / Store / keypads: Partition 'Store' is disarmed at 'Office keypad' only,"
                + " in a room that zone 2 'Office motion' of 'Office' watches.");
  }

  @Test
  void passesAKeypadOfItsOwnOrInARoomThatNobodyWatches() {
    assertThat(
            findings(
                rule,
                site(List.of("Office keypad", "Store keypad"))
                    .device("Store keypad", KEYPAD, device -> device.room("Store"))))
        .isEmpty();
    assertThat(
            findings(
                rule,
                site(List.of("Passage keypad"))
                    .device("Passage keypad", KEYPAD, device -> device.room("Passage"))))
        .isEmpty();
  }

  @Test
  void findsAPartitionWhoseKeypadsAreNone() {
    assertThat(findings(rule, site(List.of("Horn")).device("Horn", SOUNDER)))
        .containsExactly(
            "error at partitions / Store / keypads: Partition 'Store' names 'Horn', and none of these is a"
                + " keypad.");
  }

  @Test
  void doesNotAssessAKeypadWithoutARoom() {
    assertThat(notAssessed(rule, site(List.of("Store keypad")).device("Store keypad", KEYPAD)))
        .singleElement()
        .asString()
        .endsWith("in which room 'Store keypad' is; add: room: Hall");
  }
}
