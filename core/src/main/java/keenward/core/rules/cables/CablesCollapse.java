package keenward.core.rules.cables;

import java.util.List;
import keenward.core.electrical.CableNetwork;
import keenward.core.electrical.CableState;
import keenward.core.plan.PlanPath;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** Cables cannot carry what their devices want. */
public final class CablesCollapse implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.CABLES, 1, "cables-collapse", Severity.ERROR)
          .source(Source.practice())
          .purpose(
              "Solves each network of cables with the battery full and at the end of discharge, at rest "
                  + "and in alarm, and finds those whose devices get no steady voltage. A load of constant "
                  + "power draws the more, the lower its voltage: a cable passes on at most E^2 / 4R (matched "
                  + "load, circuit theory), and beyond that nothing holds.")
          .consequence(
              "Regulators restart again and again, relays chatter, and the system is dead while the "
                  + "mains is off.")
          .limits("Looks at networks whose cables, currents and battery voltage the plan gives.")
          .remedy(
              "Doubled cores, a thicker cable, a shorter run, or a supply nearer to the devices.")
          .broken(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { voltage: 13.7 V, rating: 1000 mA }
              devices:
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 350 mA, minimum voltage: 9 V, supply: Main, load: power }
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
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 350 mA, minimum voltage: 9 V, supply: Main, load: power }
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
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 350 mA, minimum voltage: 6 V, supply: Main, load: power }
              cables:
                To siren: { from: Main, to: Siren, length: 30 m, conductor: 0.22 mm2 }
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
    for (CableNetwork network : input.power().networks()) {
      report.judged();
      if (network.collapsed().isEmpty()) {
        continue;
      }
      List<String> states = network.collapsed().stream().sorted().map(CableState::words).toList();
      report.found(
          PlanPath.of("cables", network.cables().getFirst().cable().name()),
          "The cables from '"
              + network.supply()
              + "' to "
              + Words.someNames(network.devices())
              + " cannot carry what is drawn ("
              + String.join("; ", states)
              + "): no voltage holds there.",
          "Double cores, use thicker cable, shorten the run, or put a supply nearer.",
          Involved.devices(network.devices()));
    }
  }
}
