package keenward.core.rules.cables;

import keenward.core.electrical.CableNetwork;
import keenward.core.electrical.CableState;
import keenward.core.electrical.Certainty;
import keenward.core.plan.PlanPath;
import keenward.core.quantities.Current;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** A fuse or current limit carries more than it may. */
public final class FuseTooSmall implements Rule {

  // Binary noise of a sum must not trip a fuse that carries just what it is for.
  private static final double ROUNDING = 1e-9;

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.CABLES, 3, "fuse-too-small", Severity.ERROR)
          .source(Source.practice())
          .purpose(
              "Compares what flows through each cable with the fuse or current limit at its near end, "
                  + "in the worst of the states computed.")
          .consequence("The fuse trips in the alarm, and everything behind it falls silent.")
          .limits(
              "Steady currents only: the rush when sounders start is not in the plan. Looks at cables "
                  + "whose fuse the plan gives.")
          .remedy(
              "A larger fuse where the cable and the supply allow it, or fewer devices behind it.")
          .broken(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { voltage: 13.7 V, rating: 1000 mA }
              devices:
                Siren: { kind: siren, wiring: wired, standby current: 10 mA, alarm current: 350 mA, minimum voltage: 9 V, supply: Main, load: current }
              cables:
                To siren: { from: Main, to: Siren, length: 8 m, conductor: 1.5 mm2, fuse: 300 mA }
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
              cables:
                To siren: { from: Main, to: Siren, length: 8 m, conductor: 1.5 mm2, fuse: 500 mA }
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
              cables:
                To siren: { from: Main, to: Siren, length: 8 m, conductor: 1.5 mm2, fuse: 350 mA }
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
      for (CableNetwork.Line line : network.cables()) {
        line.cable().fuse().find().ifPresent(fuse -> judge(network, line, fuse, report));
      }
    }
  }

  private static void judge(
      CableNetwork network, CableNetwork.Line line, Current fuse, Report report) {
    PlanPath place = PlanPath.of("cables", line.cable().name(), "fuse");
    double milliamps = 0;
    CableState worst = CableState.FULL_AT_REST;
    for (CableState state : CableState.values()) {
      double carried = Math.abs(line.milliamps().getOrDefault(state, 0.0));
      if (carried > milliamps * (1 + ROUNDING)) {
        milliamps = carried;
        worst = state;
      }
    }
    boolean isOver = milliamps > fuse.milliamps() * (1 + ROUNDING);
    if (!isOver && (network.certainty() != Certainty.KNOWN || !network.collapsed().isEmpty())) {
      report.notAssessed(
          place,
          "whether the fuse of cable '"
              + line.cable().name()
              + "' holds, since not all currents are known",
          "alarm current: ... mA");
      return;
    }
    report.judged();
    if (isOver) {
      report.found(
          place,
          "Through '"
              + line.cable().name()
              + "' flow "
              + Words.number(Math.ceil(milliamps * (1 - ROUNDING)))
              + " mA ("
              + worst.words()
              + "), and its fuse is for "
              + fuse.written()
              + ".",
          "Fit a larger fuse where cable and supply allow it, or feed fewer devices through it.",
          Involved.devices(network.devices()));
    }
  }
}
