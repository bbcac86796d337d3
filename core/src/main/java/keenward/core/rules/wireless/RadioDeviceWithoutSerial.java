package keenward.core.rules.wireless;

import java.util.List;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Fact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Wiring;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Kinds;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;

/** A radio device has no serial number. */
public final class RadioDeviceWithoutSerial implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.WIRELESS, 1, "radio-device-without-serial", Severity.WARNING)
          .source(Source.practice())
          .purpose("Looks for radio detectors and fobs whose serial number the plan does not give.")
          .consequence(
              "The panel knows a radio device by its serial number alone: without it nobody can enter it, and nobody"
                  + " can later tell which of two detectors is which.")
          .limits(
              "Looks at detectors and fobs; receivers and repeaters are not learnt by serial number.")
          .remedy("Copy the number from the label, before the device is on the wall.")
          .broken(
              """
              keenward: 1
              site: Example
              panel: { radio supervision: 2 h }
              devices:
                Office motion: { kind: motion, wiring: radio }
              zones:
                1: { name: Office, response: instant, device: Office motion }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              panel: { radio supervision: 2 h }
              devices:
                Office motion: { kind: motion, wiring: radio, serial: "61 2208 16" }
              zones:
                1: { name: Office, response: instant, device: Office motion }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              panel: { radio supervision: 2 h }
              devices:
                Office motion: { kind: motion, wiring: wired }
              zones:
                1: { name: Office, response: instant, device: Office motion }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    for (Device device : input.plan().devices()) {
      boolean isLearnt = Kinds.isDetector(device.kind()) || device.kind() == DeviceKind.FOB;
      if (!isLearnt || device.traits().wiring().orNull() != Wiring.RADIO) {
        continue;
      }
      report.judged();
      if (!device.serial().isGiven()) {
        report.found(
            PlanPath.of("devices", device.name(), "serial"),
            "Radio device '"
                + device.name()
                + "' has no serial number"
                + (device.serial() instanceof Fact.Unknown ? " yet." : "."),
            "Add `serial:` as its label has it, in quotes.",
            Involved.devices(List.of(device.name())));
      }
    }
  }
}
