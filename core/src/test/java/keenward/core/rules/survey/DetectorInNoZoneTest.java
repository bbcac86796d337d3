package keenward.core.rules.survey;

import static keenward.core.plan.DeviceKind.CONTACT;
import static keenward.core.plan.DeviceKind.KEYPAD;
import static keenward.core.plan.DeviceKind.MOTION;
import static keenward.core.plan.ZoneResponse.PERIMETER;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class DetectorInNoZoneTest {

  private final DetectorInNoZone rule = new DetectorInNoZone();

  @Test
  void findsTheDetectorThatNoZoneNames() {
    PlanBuilder plan =
        PlanBuilder.site()
            .device("Door", CONTACT)
            .device("Eye", MOTION)
            .device("Keypad", KEYPAD)
            .zone(1, "Door", PERIMETER, zone -> zone.device("Door"));

    assertThat(findings(rule, plan))
        .containsExactly(
            "warning at devices / Eye: Device 'Eye' of kind motion belongs to none of the 1 zones.");
    assertThat(run(rule, plan).judgedCount()).isEqualTo(2);
  }
}
