package keenward.core.rules.loops;

import java.util.Optional;
import keenward.core.plan.LoopWiring;
import keenward.core.plan.Regime;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Standard;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneResponse;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Kinds;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** A loop that has to be supervised has no resistor. */
public final class LoopWithoutResistor implements Rule {

  private static final int SUPERVISED_FROM_GRADE = 2;

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.LOOPS, 2, "loop-without-resistor", Severity.ERROR)
          .source(
              Source.memory(
                  "EN 50131-1", "2006", "tamper protection of interconnections, grade 2 and up"))
          .source(
              Source.read(
                  "UL 1023", "", "1.6: an open circuit has to be shown", "scope of UL 1023"))
          .source(Source.practice())
          .purpose(
              "Looks for loops without a resistor at grade 2 and up, under UL 1023, and on fire, carbon monoxide and"
                  + " hold-up zones under any regime.")
          .consequence(
              "A bridged cable looks like a closed door: the zone is dead and nobody is told. A cut cable of a smoke"
                  + " detector is never noticed.")
          .limits("Judges zones whose wiring the plan states.")
          .parameter("first grade of en50131 with supervised loops", "2", "")
          .remedy("Wire the loop with its end-of-line resistors, fitted at the detector.")
          .broken(
              """
              keenward: 1
              site: Example
              regime: en50131 grade 2
              zones:
                1: { name: Store door, response: perimeter, device: contact, wiring: none }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              regime: en50131 grade 2
              zones:
                1: { name: Store door, response: perimeter, device: contact, wiring: double resistor, resistors: [4.7 kohm, 4.7 kohm] }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              regime: en50131 grade 1
              zones:
                1: { name: Store door, response: perimeter, device: contact, wiring: none }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    Optional<String> regime = demanding(input.plan());
    for (Zone zone : input.plan().zones()) {
      Optional<String> because =
          Kinds.isLifeSafety(zone.response()) || zone.response() == ZoneResponse.HOLD_UP
              ? Optional.of("a zone with response " + zone.response().word())
              : regime;
      Optional<LoopWiring> wiring = zone.wiring().find();
      if (because.isEmpty() || wiring.isEmpty()) {
        continue;
      }
      report.judged();
      if (wiring.get() == LoopWiring.NONE) {
        report.found(
            zone.path().then("wiring"),
            Words.atStart(zone)
                + " is wired without a resistor, and "
                + because.get()
                + " needs a supervised loop.",
            "Wire zone " + zone.number() + " with end-of-line resistors at the detector.",
            Involved.zone(zone.number()));
      }
    }
  }

  private static Optional<String> demanding(SitePlan plan) {
    return plan.regimes().stream()
        .filter(regime ->
            regime.standard() == Standard.UL1023
                || (regime.standard() == Standard.EN50131
                    && regime.grade().orElse(0) >= SUPERVISED_FROM_GRADE))
        .map(Regime::words)
        .findFirst();
  }
}
