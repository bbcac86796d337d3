package keenward.core.rules.wireless;

import static keenward.core.plan.DeviceKind.CONTACT;
import static keenward.core.plan.DeviceKind.FOB;
import static keenward.core.plan.DeviceKind.MOTION;
import static keenward.core.plan.DeviceKind.RECEIVER;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import keenward.core.plan.DeviceBuilder;
import keenward.core.plan.PlanBuilder;
import org.junit.jupiter.api.Test;

class RadioDeviceWithoutSerialTest {

  private final RadioDeviceWithoutSerial rule = new RadioDeviceWithoutSerial();

  @Test
  void findsDetectorsAndFobsWithoutOneOrNotKnownYet() {
    PlanBuilder plan =
        PlanBuilder.site()
            .device("Office motion", MOTION, DeviceBuilder::radio)
            .device("Fob", FOB, device -> device.radio().serialUnknown());

    assertThat(findings(rule, plan))
        .containsExactly(
            "warning at devices / Office motion / serial: Radio device 'Office motion' has no serial number.",
            "warning at devices / Fob / serial: Radio device 'Fob' has no serial number yet.");
  }

  @Test
  void passesNumberedDevicesAndLeavesOthersAlone() {
    PlanBuilder plan =
        PlanBuilder.site()
            .device("Office motion", MOTION, device -> device.radio("12"))
            .device("Door", CONTACT, DeviceBuilder::wired)
            .device("Receiver", RECEIVER, DeviceBuilder::radio);

    assertThat(findings(rule, plan)).isEmpty();
    assertThat(run(rule, plan).judgedCount()).isEqualTo(1);
  }
}
