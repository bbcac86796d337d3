package keenward.core.rules.addressing;

import static keenward.core.plan.DeviceKind.CONTACT;
import static keenward.core.plan.DeviceKind.MOTION;
import static keenward.core.plan.ZoneResponse.INSTANT;
import static keenward.core.plan.ZoneResponse.PERIMETER;
import static keenward.core.rules.RuleCheck.findings;
import static keenward.core.rules.RuleCheck.run;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import keenward.core.plan.PlanBuilder;
import keenward.core.rules.Involved;
import org.junit.jupiter.api.Test;

class SerialUsedTwiceTest {

  private final SerialUsedTwice rule = new SerialUsedTwice();

  @Test
  void findsOneSerialOnTwoDevicesHoweverItIsWritten() {
    PlanBuilder plan =
        PlanBuilder.site()
            .device(
                "Changing", MOTION, device -> device.radio("90 4411 05").inputs("sensor", "lid"))
            .device("Workshop", MOTION, device -> device.radio("90-441105").inputs("sensor", "lid"))
            .zone(7, "Changing", INSTANT, zone -> zone.device("Changing"))
            .zone(9, "Workshop", INSTANT, zone -> zone.device("Workshop"));

    assertThat(findings(rule, plan))
        .containsExactly(
            "error at devices / Workshop / serial: Devices 'Changing' and 'Workshop' carry the same"
                + " serial number 90-441105 and are used by the same input 'sensor'.");
    assertThat(run(rule, plan).findings().getFirst().involved())
        .isEqualTo(
            Involved.devices(List.of("Changing", "Workshop")).and(Involved.zones(List.of(7, 9))));
  }

  @Test
  void findsASerialOfDevicesThatNoZoneUsesYet() {
    PlanBuilder plan =
        PlanBuilder.site()
            .device("A", MOTION, device -> device.radio("1"))
            .device("B", MOTION, device -> device.radio("1"));

    assertThat(findings(rule, plan)).hasSize(1);
  }

  @Test
  void passesTwoInputsOfOnePieceWrittenAsTwoDevices() {
    PlanBuilder plan =
        PlanBuilder.site()
            .device("Upper", CONTACT, device -> device.radio("7").inputs("contact", "terminals"))
            .device("Lower", CONTACT, device -> device.radio("7").inputs("contact", "terminals"))
            .zone(1, "Upper", PERIMETER, zone -> zone.device("Upper"))
            .zone(2, "Lower", PERIMETER, zone -> zone.device("Lower", "terminals"));

    assertThat(findings(rule, plan)).isEmpty();
    assertThat(run(rule, plan).judgedCount()).isEqualTo(2);
  }

  @Test
  void judgesNoDeviceWithoutASerial() {
    PlanBuilder plan =
        PlanBuilder.site()
            .device("A", MOTION)
            .device("B", MOTION, device -> device.serialUnknown());

    assertThat(run(rule, plan).judgedCount()).isZero();
  }
}
