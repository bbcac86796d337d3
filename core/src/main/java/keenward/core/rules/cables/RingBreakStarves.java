package keenward.core.rules.cables;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import keenward.core.electrical.CableNetwork;
import keenward.core.electrical.CableState;
import keenward.core.plan.Device;
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
import org.jspecify.annotations.Nullable;

/** A ring of cable does not survive one break. */
public final class RingBreakStarves implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.CABLES, 4, "ring-break-starves", Severity.WARNING)
          .source(Source.practice())
          .purpose(
              "Opens each cable of a ring in turn and computes what every device still gets at the end "
                  + "of discharge, in alarm.")
          .consequence(
              "A ring is laid so that one break harms nobody; this one only hides the break until the "
                  + "battery is low.")
          .limits(
              "Looks at rings whose cables, currents and least voltages the plan gives, and at breaks "
                  + "that leave every place fed.")
          .remedy(
              "A thicker cable all the way round, so that it carries everything from either end.")
          .broken(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { voltage: 13.7 V, rating: 1000 mA }
              devices:
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 350 mA, minimum voltage: 9 V, supply: Main, load: current }
                Expander: { kind: expander, wiring: wired, standby current: 10 mA, alarm current: 12 mA, minimum voltage: 9 V, supply: Main }
              cables:
                C1: { from: Main, to: Siren, length: 30 m, conductor: 0.5 mm2 }
                C2: { from: Main, to: Expander, length: 30 m, conductor: 0.5 mm2 }
                C3: { from: Expander, to: Siren, length: 30 m, conductor: 0.5 mm2 }
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
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 350 mA, minimum voltage: 9 V, supply: Main, load: current }
                Expander: { kind: expander, wiring: wired, standby current: 10 mA, alarm current: 12 mA, minimum voltage: 9 V, supply: Main }
              cables:
                C1: { from: Main, to: Siren, length: 8 m, conductor: 0.5 mm2 }
                C2: { from: Main, to: Expander, length: 8 m, conductor: 0.5 mm2 }
                C3: { from: Expander, to: Siren, length: 8 m, conductor: 0.5 mm2 }
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
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 350 mA, minimum voltage: 9 V, supply: Main, load: current }
                Expander: { kind: expander, wiring: wired, standby current: 10 mA, alarm current: 12 mA, minimum voltage: 9 V, supply: Main }
              cables:
                C1: { from: Main, to: Siren, length: 24 m, conductor: 0.5 mm2 }
                C2: { from: Main, to: Expander, length: 24 m, conductor: 0.5 mm2 }
                C3: { from: Expander, to: Siren, length: 24 m, conductor: 0.5 mm2 }
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
    Map<String, Voltage> needed = new HashMap<>();
    for (Device device : input.plan().devices()) {
      device.traits().minimumVoltage().find().ifPresent(least -> needed.put(device.name(), least));
    }
    for (CableNetwork network : input.power().networks()) {
      for (CableNetwork.Break broken : network.breaks()) {
        report.judged();
        judge(network, broken, needed, report);
      }
    }
  }

  private static void judge(
      CableNetwork network, CableNetwork.Break broken, Map<String, Voltage> needed, Report report) {
    List<String> starved =
        network.places().stream()
            .filter(place -> isStarved(place, broken, needed.get(place.name())))
            .map(CableNetwork.Place::name)
            .toList();
    if (!starved.isEmpty()) {
      report.found(
          PlanPath.of("cables", broken.cable()),
          "With '"
              + broken.cable()
              + "' broken, the ring of '"
              + network.supply()
              + "' leaves too little at "
              + Words.someNames(starved)
              + " at the end of discharge.",
          "Use thicker cable all the way round.",
          Involved.devices(starved));
    }
  }

  /** Whether a break takes from a device what it has while the ring is whole. */
  private static boolean isStarved(
      CableNetwork.Place place, CableNetwork.Break broken, @Nullable Voltage least) {
    Double whole = place.volts().get(CableState.EMPTY_IN_ALARM);
    Double left = broken.volts().get(place.name());
    return least != null
        && whole != null
        && left != null
        && whole >= least.volts()
        && left < least.volts();
  }
}
