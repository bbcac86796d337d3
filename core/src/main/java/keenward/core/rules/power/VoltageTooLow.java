package keenward.core.rules.power;

import java.util.List;
import java.util.Optional;
import keenward.core.electrical.CableRun;
import keenward.core.electrical.Certainty;
import keenward.core.electrical.Figures;
import keenward.core.electrical.Remedy;
import keenward.core.plan.PlanPath;
import keenward.core.quantities.Voltage;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** A device gets less voltage than it needs. */
public final class VoltageTooLow implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.POWER, 4, "voltage-too-low", Severity.ERROR)
          .source(Source.memory("NEC", "", "chapter 9, table 8: conductor resistance"))
          .source(Source.practice())
          .purpose(
              "Follows the cables from the supply to each device, with the battery at the end of its discharge and"
                  + " every device in alarm, and compares the voltage that arrives with the least that the device"
                  + " works at.")
          .consequence(
              "The detector at the far end goes blind, or restarts, when the siren sounds on battery.")
          .limits("Looks at devices whose cables, currents and least voltage the plan gives.")
          .remedy(
              "Doubled cores, a thicker cable, a shorter run, or a supply nearer to the device: the finding gives those that"
                  + " are enough, with the voltage each leaves.")
          .broken(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { voltage: 13.7 V, rating: 1000 mA }
              devices:
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 350 mA, minimum voltage: 10 V, supply: Main }
              cables:
                To siren: { from: Main, to: Siren, length: 60 m, conductor: 0.22 mm2 }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { voltage: 13.7 V, rating: 1000 mA }
              devices:
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 350 mA, minimum voltage: 10 V, supply: Main }
              cables:
                To siren: { from: Main, to: Siren, length: 8 m, conductor: 1.5 mm2 }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { voltage: 13.7 V, rating: 1000 mA }
              devices:
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 350 mA, minimum voltage: 10 V, supply: Main }
              cables:
                To siren: { from: Main, to: Siren, length: 20 m, conductor: 1 mm2 }
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
    for (CableRun run : input.power().cableRuns()) {
      Optional<Voltage> minimum = run.minimum().find();
      PlanPath place = PlanPath.of("devices", run.device().name(), "minimum voltage");
      if (minimum.isEmpty()) {
        report.notAssessed(
            place,
            "whether '"
                + run.device().name()
                + "' gets enough voltage, since the plan does not say what it needs",
            "minimum voltage: ... V");
        continue;
      }
      if (run.isCollapsed()) {
        // CAB-01 says so for the cables.
        continue;
      }
      double arrives = run.volts().value();
      if (!run.isTooLow() && run.volts().certainty() != Certainty.KNOWN) {
        report.notAssessed(
            PlanPath.of("devices", run.device().name()),
            "whether '"
                + run.device().name()
                + "' gets enough voltage: "
                + run.volts().result()
                + " arrive",
            "alarm current: ... mA");
        continue;
      }
      report.judged();
      if (run.isTooLow()) {
        report.found(
            place,
            "At '"
                + run.device().name()
                + "' "
                + run.volts().certainty().words()
                + Figures.voltsReached(arrives)
                + " arrive from '"
                + run.supply()
                + "' through "
                + Words.names(run.cables())
                + " at the end of discharge, and it needs "
                + minimum.get().written()
                + ".",
            run.remedies().isEmpty()
                ? "No cable gives it that voltage: fit another device, or another supply."
                : "Any one of these is enough: "
                    + String.join("; ", run.remedies().stream().map(Remedy::text).toList())
                    + ".",
            Involved.devices(List.of(run.device().name())));
      }
    }
  }
}
