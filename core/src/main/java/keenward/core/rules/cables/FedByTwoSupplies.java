package keenward.core.rules.cables;

import keenward.core.plan.Device;
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

/** Cables of two supplies meet. */
public final class FedByTwoSupplies implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.CABLES, 2, "fed-by-two-supplies", Severity.WARNING)
          .source(Source.practice())
          .purpose("Follows the cables of each supply and finds the places that two of them reach.")
          .consequence(
              "Supplies side by side push current into one another, one charges the battery of the "
                  + "other, and a short takes both down.")
          .limits("Cannot see a diode or a changeover relay in a joint box: note it there.")
          .remedy(
              "Take one of the cables off and join only the negative sides, or let a changeover unit "
                  + "choose.")
          .broken(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { voltage: 13.7 V, rating: 1000 mA }
                Second: { voltage: 13.7 V, rating: 1000 mA }
              devices:
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 200 mA, minimum voltage: 9 V, supply: Main, load: current }
              cables:
                C1: { from: Main, to: Siren, length: 8 m, conductor: 1.5 mm2 }
                C2: { from: Second, to: Siren, length: 8 m, conductor: 1.5 mm2 }
              zones:
                1: { name: Front door, response: entry-exit, device: contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { voltage: 13.7 V, rating: 1000 mA }
                Second: { voltage: 13.7 V, rating: 1000 mA }
              devices:
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 200 mA, minimum voltage: 9 V, supply: Main, load: current }
              cables:
                C1: { from: Main, to: Siren, length: 8 m, conductor: 1.5 mm2 }
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
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 200 mA, minimum voltage: 9 V, supply: Main, load: current }
              cables:
                C1: { from: Main, to: Siren, length: 8 m, conductor: 1.5 mm2 }
                C2: { from: Main, to: Siren, length: 8 m, conductor: 1.5 mm2 }
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
    report.judged();
    input
        .power()
        .sharedPlaces()
        .forEach((place, supplies) ->
            report.found(
                PlanPath.of("cables", supplies.cable()),
                "'" + place + "' is fed by " + Words.names(supplies.supplies()) + ".",
                "Take the cable of one of them off.",
                Involved.devices(
                    input.plan().devices().stream()
                        .map(Device::name)
                        .filter(place::equals)
                        .toList())));
  }
}
