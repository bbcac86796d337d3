package keenward.core.rules.survey;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import keenward.core.plan.Device;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Kinds;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;

/** A detector is fitted, and no zone watches it. */
public final class DetectorInNoZone implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.SURVEY, 2, "detector-in-no-zone", Severity.WARNING)
          .source(Source.practice())
          .purpose("Looks for detectors and buttons of the plan that no zone names.")
          .consequence("It hangs on the wall, blinks, and reports to nobody; people rely on it.")
          .limits("Keypads, sounders and the like need no zone.")
          .remedy("Give it a zone, or take it off the plan.")
          .broken(
              """
              keenward: 1
              site: Example
              devices:
                Office motion: { kind: motion, wiring: wired }
                Store motion:  { kind: motion, wiring: wired }
              zones:
                1: { name: Office, response: instant, device: Office motion }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              devices:
                Office motion: { kind: motion, wiring: wired }
                Store motion:  { kind: motion, wiring: wired }
              zones:
                1: { name: Office, response: instant, device: Office motion }
                2: { name: Store,  response: instant, device: Store motion }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              devices:
                Office motion: { kind: motion, wiring: wired }
                Store keypad:  { kind: keypad, wiring: bus }
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
    Set<String> watched = new LinkedHashSet<>();
    for (Zone zone : input.plan().zones()) {
      for (ZoneDevice each : zone.devices()) {
        if (each instanceof ZoneDevice.Fitted fitted) {
          watched.add(fitted.device().name());
        }
      }
    }
    for (Device device : input.plan().devices()) {
      if (!Kinds.isDetector(device.kind())) {
        continue;
      }
      report.judged();
      if (!watched.contains(device.name())) {
        report.found(
            PlanPath.of("devices", device.name()),
            "Device '"
                + device.name()
                + "' of kind "
                + device.kind().word()
                + " belongs to none of the "
                + input.plan().zones().size()
                + " zones.",
            "Add a zone with `device: " + device.name() + "`, or take the device off the plan.",
            Involved.devices(List.of(device.name())));
      }
    }
  }
}
