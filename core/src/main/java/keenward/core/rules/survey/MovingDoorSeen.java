package keenward.core.rules.survey;

import java.util.List;
import java.util.Set;
import keenward.core.building.FloorGeometry;
import keenward.core.building.OpeningPlace;
import keenward.core.building.coverage.DetectorView;
import keenward.core.plan.Opening;
import keenward.core.plan.OpeningKind;
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

/** A motion detector sees a large leaf to outside that wind moves. */
public final class MovingDoorSeen implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.SURVEY, 11, "moving-door-seen", Severity.ADVICE)
          .source(Source.practice())
          .purpose(
              "Looks for motion detectors, dual ones too, that see a roller shutter or gate to outside from within.")
          .consequence("Wind shakes the leaf, or blows past it, and sets off false alarms.")
          .limits(
              "Whether the leaf really moves is seen on site only. A shutter counts as seen where the place 0.3 m inside its middle is."
                  + " A zone that gives a reason is let pass.")
          .remedy("Turn the detector along the leaf, not at it, and watch the leaf by a contact.")
          .broken(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store: { use: store, outline: [[0, 0], [8, 0], [8, 6], [0, 6]] }
                  openings:
                    Yard gate: { kind: roller-shutter, between: [Store, outside], edge: 1, at: 3 m, width: 3 m }
              devices:
                Gate contact: { kind: contact, wiring: wired, opening: Yard gate, magnet: { gap: 10 mm } }
                Store motion: { kind: motion, wiring: wired, room: Store, at: [0.1, 5.9], bearing: 140 deg, coverage: { pattern: fan, range: 12 m, angle: 40 deg } }
              zones:
                1: { name: Yard gate, response: perimeter, device: Gate contact }
                2: { name: Store, response: instant, device: Store motion }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store: { use: store, outline: [[0, 0], [8, 0], [8, 6], [0, 6]] }
                  openings:
                    Yard gate: { kind: roller-shutter, between: [Store, outside], edge: 1, at: 3 m, width: 3 m }
              devices:
                Gate contact: { kind: contact, wiring: wired, opening: Yard gate, magnet: { gap: 10 mm } }
                Store motion: { kind: motion, wiring: wired, room: Store, at: [0.1, 5.9], bearing: 112 deg, coverage: { pattern: fan, range: 12 m, angle: 40 deg } }
              zones:
                1: { name: Yard gate, response: perimeter, device: Gate contact }
                2: { name: Store, response: instant, device: Store motion }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store: { use: store, outline: [[0, 0], [8, 0], [8, 6], [0, 6]] }
                  openings:
                    Yard gate: { kind: door, between: [Store, outside], edge: 1, at: 3 m, width: 1 m }
              devices:
                Gate contact: { kind: contact, wiring: wired, opening: Yard gate, magnet: { gap: 10 mm } }
                Store motion: { kind: motion, wiring: wired, room: Store, at: [0.1, 5.9], bearing: 140 deg, coverage: { pattern: fan, range: 12 m, angle: 40 deg } }
              zones:
                1: { name: Yard gate, response: perimeter, device: Gate contact }
                2: { name: Store, response: instant, device: Store motion }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    Set<String> explained = Explained.detectors(input.plan());
    for (FloorGeometry floor : input.building().floors()) {
      List<OpeningPlace> moving =
          floor.openings().stream().filter(place -> moves(place.opening())).toList();
      for (DetectorView view : moving.isEmpty() ? List.<DetectorView>of() : input.views().views()) {
        if (view.floor().equals(floor.name()) && !explained.contains(view.device().name())) {
          report.judged();
          List<String> seen =
              moving.stream()
                  .filter(place -> view.seen().sees(place.justInside()))
                  .map(place -> place.opening().name())
                  .toList();
          if (!seen.isEmpty()) {
            report(view, seen, report);
          }
        }
      }
    }
  }

  private static boolean moves(Opening opening) {
    return opening.isOutside()
        && (opening.kind() == OpeningKind.ROLLER_SHUTTER || opening.kind() == OpeningKind.GATE);
  }

  private static void report(DetectorView view, List<String> seen, Report report) {
    String name = view.device().name();
    report.found(
        PlanPath.of("devices", name),
        "'" + name + "' sees " + Words.names(seen) + ", which wind can move.",
        "Turn '" + name + "' along the leaf, or let a contact alone watch it.",
        Involved.devices(List.of(name)).and(Involved.openings(seen)));
  }
}
