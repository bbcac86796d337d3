package keenward.core.rules.cables;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import keenward.core.plan.Cable;
import keenward.core.plan.Junction;
import keenward.core.plan.PlanPath;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;

/** A cable ends in a joint box from which nothing is fed. */
public final class CableFeedsNothing implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.CABLES, 5, "cable-feeds-nothing", Severity.WARNING)
          .source(Source.practice())
          .purpose(
              "Finds joint boxes with a cable coming in, no cable going on, and so no device behind "
                  + "them.")
          .consequence(
              "A device was forgotten in the plan, and its current is missing from every sum.")
          .limits("Cannot tell a spare cable that was laid on purpose.")
          .remedy("Add what hangs there and the cable to it, or take the cable out of the plan.")
          .broken(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { voltage: 13.7 V, rating: 1000 mA }
              devices:
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 200 mA, minimum voltage: 9 V, supply: Main, load: current }
              junctions: { Box: { room: unknown } }
              cables:
                C1: { from: Main, to: Siren, length: 8 m, conductor: 1.5 mm2 }
                C2: { from: Main, to: Box, length: 8 m, conductor: 1.5 mm2 }
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
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 200 mA, minimum voltage: 9 V, supply: Main, load: current }
              junctions: { Box: { room: unknown } }
              cables:
                C1: { from: Box, to: Siren, length: 8 m, conductor: 1.5 mm2 }
                C2: { from: Main, to: Box, length: 8 m, conductor: 1.5 mm2 }
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
    Set<String> goesOn =
        input.plan().cables().stream().map(Cable::from).collect(Collectors.toSet());
    for (Junction junction : input.plan().junctions()) {
      List<Cable> arriving =
          input.plan().cables().stream()
              .filter(cable -> cable.to().equals(junction.name()))
              .toList();
      report.judged();
      if (!arriving.isEmpty() && !goesOn.contains(junction.name()) && arriving.size() == 1) {
        String cable = arriving.getFirst().name();
        report.found(
            PlanPath.of("cables", cable, "to"),
            "Cable '" + cable + "' ends in '" + junction.name() + "', from which nothing is fed.",
            "Add what hangs there and the cable to it, or take the cable out.",
            Involved.NOTHING);
      }
    }
  }
}
