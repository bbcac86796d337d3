package keenward.core.rules.power;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import keenward.core.electrical.CableRun;
import keenward.core.electrical.outage.Outage;
import keenward.core.electrical.outage.OutageEvent;
import keenward.core.plan.PlanPath;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;

/** A device stops working on the battery before the time that the regime wants is over. */
public final class DeviceDiesEarly implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.POWER, 6, "device-dies-early", Severity.ERROR)
          .source(Source.memory("EN 50131-6", "", "standby table by grade"))
          .source(Source.memory("UL 1023", "", "standby 4 h, then 4 min of alarm"))
          .source(Source.memory("NFPA 72", "", "household: standby 24 h, then 4 min of alarm"))
          .purpose(
              "Empties the fitted battery as the regime wants, at rest and then in alarm, and looks when each device gets less than its least voltage.")
          .consequence(
              "The detector is blind, or the sounder silent, while the battery still counts as good.")
          .limits(
              "Looks at devices whose least voltage is given and that PWR-04 does not find already. Discharge curve and resistance of the battery are common practice; see docs/methods/battery.md.")
          .remedy(
              "Choose a device that works at a lower voltage, a larger battery, or shorter or thicker cables.")
          .broken(
              """
              keenward: 1
              site: Example
              regime: ul1023
              supplies:
                Main:
                  voltage: 13.7 V
                  rating: 1000 mA
                  own standby current: 200 mA
                  own alarm current: 300 mA
                  charge current: 600 mA
                  battery: { capacity: 2 Ah, fitted: 2026-10-02 }
                  lowest temperature: 25 C
                  ageing factor: 1.25
              devices:
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 300 mA, minimum voltage: 12.2 V, supply: Main }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              regime: ul1023
              supplies:
                Main:
                  voltage: 13.7 V
                  rating: 1000 mA
                  own standby current: 200 mA
                  own alarm current: 300 mA
                  charge current: 600 mA
                  battery: { capacity: 2 Ah, fitted: 2026-10-02 }
                  lowest temperature: 25 C
                  ageing factor: 1.25
              devices:
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 300 mA, minimum voltage: 10 V, supply: Main }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              regime: ul1023
              supplies:
                Main:
                  voltage: 13.7 V
                  rating: 1000 mA
                  own standby current: 200 mA
                  own alarm current: 300 mA
                  charge current: 600 mA
                  battery: { capacity: 2 Ah, fitted: 2026-10-02 }
                  lowest temperature: 25 C
                  ageing factor: 1.25
              devices:
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 300 mA, minimum voltage: 11.9 V, supply: Main }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    input.outages().notAssessed().forEach(report::notAssessed);
    Set<String> tooLowAnyway =
        input.power().cableRuns().stream()
            .filter(CableRun::isTooLow)
            .map(run -> run.device().name())
            .collect(Collectors.toSet());
    for (Outage outage : input.outages().outages()) {
      if (outage.duty().isEmpty()) {
        continue;
      }
      report.judged();
      outage.events().stream()
          .filter(event -> event.kind() == OutageEvent.Kind.DEVICE_DIES)
          .filter(event -> event.hours() < outage.wantedHours())
          .filter(event -> !tooLowAnyway.contains(event.device().orElse("")))
          .forEach(event -> tell(outage, event, report));
    }
  }

  private static void tell(Outage outage, OutageEvent event, Report report) {
    String device = event.device().orElseThrow();
    report.found(
        PlanPath.of("devices", device, "minimum voltage"),
        "On the battery of '"
            + outage.supply()
            + "', '"
            + device
            + "' gets too little after "
            + event.when()
            + ", and "
            + outage.duty().orElseThrow().regime()
            + " wants "
            + OutageEvent.time(outage.wantedHours())
            + " ("
            + event.line().working()
            + ").",
        "Fit a device that works at a lower voltage, or give '"
            + outage.supply()
            + "' a larger battery or '"
            + device
            + "' a better cable.",
        Involved.devices(List.of(device)));
  }
}
