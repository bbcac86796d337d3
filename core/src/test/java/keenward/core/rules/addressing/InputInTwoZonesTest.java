package keenward.core.rules.addressing;

import static keenward.core.plan.DeviceKind.CONTACT;
import static keenward.core.plan.ZoneResponse.PERIMETER;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import keenward.core.plan.PlanBuilder;
import keenward.core.rules.Finding;
import keenward.core.rules.Involved;
import org.junit.jupiter.api.Test;

class InputInTwoZonesTest {

  private final InputInTwoZones rule = new InputInTwoZones();

  private static PlanBuilder contact() {
    return PlanBuilder.site()
        .device("Contact", CONTACT, device -> device.inputs("contact", "terminals"));
  }

  @Test
  void findsAnInputBehindTwoZonesSaidOrUnsaid() {
    PlanBuilder plan =
        contact()
            .zone(1, "Left", PERIMETER, zone -> zone.device("Contact"))
            .zone(4, "Right", PERIMETER, zone -> zone.device("Contact", "contact"));

    assertThat(findings(rule, plan))
        .containsExactly(
            "error at zones / 4 / device: Input 'contact' of device 'Contact' stands behind 2 zones:"
                + " 1 'Left' and 4 'Right'.");
    assertThat(run(rule, plan).findings())
        .extracting(Finding::involved)
        .extracting(Involved::zones)
        .containsExactly(List.of(1, 4));
  }

  @Test
  void passesTwoInputsOfOneDevice() {
    PlanBuilder plan =
        contact()
            .zone(1, "Left", PERIMETER, zone -> zone.device("Contact"))
            .zone(2, "Right", PERIMETER, zone -> zone.device("Contact", "terminals"));

    assertThat(findings(rule, plan)).isEmpty();
    assertThat(run(rule, plan).judgedCount()).isEqualTo(2);
  }

  @Test
  void hasNothingToJudgeWithoutDevices() {
    PlanBuilder plan =
        PlanBuilder.site()
            .zone(1, "Left", PERIMETER, zone -> zone.kind(CONTACT))
            .zone(2, "Right", PERIMETER, zone -> zone.kind(CONTACT));

    assertThat(run(rule, plan).judgedCount()).isZero();
  }
}
