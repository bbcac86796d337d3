package keenward.core.rules.survey;

import java.util.List;
import java.util.Set;
import keenward.core.building.coverage.DetectorView;
import keenward.core.building.plane.Polygons;
import keenward.core.building.plane.SeenArea;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Floor;
import keenward.core.plan.Furniture;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Point;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** An infra-red detector looks at something that grows warm or moves air by itself. */
public final class WarmThingSeen implements Rule {

  private static final int PLACES_A_SIDE = 16;

  /** So much short of a thing that its own edge does not hide it. */
  private static final double NEARLY = 0.98;

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.SURVEY, 10, "warm-thing-seen", Severity.ADVICE)
          .source(Source.practice())
          .purpose(
              "Looks for infra-red detectors that see furniture with `warms: yes` (a heater, an oven, a boiler, a fan)"
                  + " within their range and angle, with nothing before it.")
          .consequence("It warms up or blows at night and sets off false alarms.")
          .limits(
              "Dual detectors are left out: their microwave part does not mind warmth. What the plan does not mark as warm is not known."
                  + " A zone that gives a reason is let pass.")
          .remedy("Turn the detector away, or fit a dual one.")
          .broken(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Kitchen: { use: kitchen, outline: [[0, 0], [8, 0], [8, 6], [0, 6]] }
                  furniture:
                    Oven: { outline: [[7, 4], [8, 4], [8, 5], [7, 5]], height: 0.9 m, warms: yes }
              devices:
                Kitchen motion: { kind: motion, wiring: wired, room: Kitchen, at: [0.1, 0.1], bearing: 53 deg, coverage: { pattern: fan, range: 12 m, angle: 90 deg } }
              zones:
                1: { name: Kitchen, response: instant, device: Kitchen motion }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Kitchen: { use: kitchen, outline: [[0, 0], [8, 0], [8, 6], [0, 6]] }
                  furniture:
                    Cupboard: { outline: [[6, 3], [6.2, 3], [6.2, 6], [6, 6]], height: 2 m }
                    Oven: { outline: [[7, 4], [8, 4], [8, 5], [7, 5]], height: 0.9 m, warms: yes }
              devices:
                Kitchen motion: { kind: motion, wiring: wired, room: Kitchen, at: [0.1, 0.1], bearing: 53 deg, coverage: { pattern: fan, range: 12 m, angle: 90 deg } }
              zones:
                1: { name: Kitchen, response: instant, device: Kitchen motion }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Kitchen: { use: kitchen, outline: [[0, 0], [8, 0], [8, 6], [0, 6]] }
                  furniture:
                    Oven: { outline: [[7, 4], [8, 4], [8, 5], [7, 5]], height: 0.9 m, warms: no }
              devices:
                Kitchen motion: { kind: motion, wiring: wired, room: Kitchen, at: [0.1, 0.1], bearing: 53 deg, coverage: { pattern: fan, range: 12 m, angle: 90 deg } }
              zones:
                1: { name: Kitchen, response: instant, device: Kitchen motion }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    Set<String> explained = Explained.detectors(input.plan());
    for (Floor floor : input.plan().floors()) {
      List<Furniture> warm =
          floor.furniture().stream().filter(thing -> thing.warms().orElse(false)).toList();
      for (DetectorView view : warm.isEmpty() ? List.<DetectorView>of() : input.views().views()) {
        boolean isJudged =
            view.floor().equals(floor.name())
                && view.device().kind() != DeviceKind.DUAL_MOTION
                && !explained.contains(view.device().name());
        if (isJudged) {
          report.judged();
          List<String> seen =
              warm.stream()
                  .filter(thing -> isSeen(view.seen(), thing.outline()))
                  .map(Furniture::name)
                  .toList();
          if (!seen.isEmpty()) {
            report(view, seen, report);
          }
        }
      }
    }
  }

  private static boolean isSeen(SeenArea seen, List<Point> outline) {
    for (int side = 0; side < outline.size(); side++) {
      Point from = outline.get(side);
      Point to = outline.get((side + 1) % outline.size());
      for (int i = 0; i < PLACES_A_SIDE; i++) {
        Point place = Polygons.along(from, to, (i + 0.5) / PLACES_A_SIDE);
        if (seen.sees(Polygons.along(seen.eye(), place, NEARLY))) {
          return true;
        }
      }
    }
    return false;
  }

  private static void report(DetectorView view, List<String> seen, Report report) {
    String name = view.device().name();
    report.found(
        PlanPath.of("devices", name),
        "'"
            + name
            + "' looks at "
            + Words.names(seen)
            + ", which grows warm or moves air by itself.",
        "Turn '" + name + "' away, or fit a dual detector.",
        Involved.devices(List.of(name)).and(Involved.rooms(List.of(view.room()))));
  }
}
