package keenward.core.rules.survey;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import keenward.core.building.FloorGeometry;
import keenward.core.building.coverage.DetectorView;
import keenward.core.building.coverage.FloorBarriers;
import keenward.core.building.coverage.Glare;
import keenward.core.building.plane.Barriers;
import keenward.core.plan.Coverage;
import keenward.core.plan.Opening;
import keenward.core.plan.PlanPath;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;

/** A motion detector looks straight at a window. */
public final class LooksStraightAtWindow implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.SURVEY, 7, "looks-straight-at-window", Severity.ADVICE)
          .source(Source.practice())
          .purpose(
              "Looks for motion detectors with a pane to outside within 20 degrees of the middle of their angle, within"
                  + " their range and with nothing before it.")
          .consequence("Sun, headlights and moving curtains set off false alarms.")
          .limits(
              "Goes by the drawing; whether the sun ever comes in there it does not know. Curtains and ceiling patterns are"
                  + " left out. A zone that gives a reason is let pass.")
          .parameter("straight", "20", "degrees to either side")
          .remedy("Turn the detector, or put it beside or above the window.")
          .broken(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Shop: { use: shop, outline: [[0, 0], [8, 0], [8, 6], [0, 6]] }
                  openings:
                    Shop window: { kind: fixed-window, between: [Shop, outside], edge: 1, at: 3.4 m, width: 1.2 m }
              devices:
                Shop motion:    { kind: motion, wiring: wired, room: Shop, at: [4, 5.95], bearing: 180 deg, coverage: { pattern: fan, range: 12 m, angle: 90 deg } }
              zones:
                1: { name: Shop, response: instant, device: Shop motion }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Shop: { use: shop, outline: [[0, 0], [8, 0], [8, 6], [0, 6]] }
                  openings:
                    Shop window: { kind: fixed-window, between: [Shop, outside], edge: 1, at: 3.4 m, width: 1.2 m }
              devices:
                Shop motion:    { kind: motion, wiring: wired, room: Shop, at: [7.9, 0.1], bearing: 315 deg, coverage: { pattern: fan, range: 12 m, angle: 90 deg } }
              zones:
                1: { name: Shop, response: instant, device: Shop motion }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Shop: { use: shop, outline: [[0, 0], [8, 0], [8, 6], [0, 6]] }
                  openings:
                    Shop window: { kind: fixed-window, between: [Shop, outside], edge: 1, at: 3.4 m, width: 1.2 m }
              devices:
                Shop motion:    { kind: motion, wiring: wired, room: Shop, at: [4, 5.95], bearing: 180 deg, coverage: { pattern: fan, range: 12 m, angle: 90 deg } }
              zones:
                1: { name: Shop, response: instant, reason: the shutter is down at night, device: Shop motion }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    Map<String, Barriers> barriers = new HashMap<>();
    Set<String> explained = Explained.detectors(input.plan());
    for (DetectorView view : input.views().views()) {
      if (view.isFan() && !explained.contains(view.device().name())) {
        FloorGeometry floor = input.building().findFloor(view.floor()).orElseThrow();
        report.judged();
        Glare.find(
                floor,
                barriers.computeIfAbsent(view.floor(), ignored -> FloorBarriers.of(floor)),
                view.seen().eye(),
                view.seen().startRadians() + view.seen().spanRadians() / 2,
                view.device().traits().coverage().find().flatMap(Coverage::rangeMetres).orElse(0.0))
            .ifPresent(pane -> report(view, pane, report));
      }
    }
  }

  private static void report(DetectorView view, Opening pane, Report report) {
    report.found(
        PlanPath.of("devices", view.device().name()),
        "'" + view.device().name() + "' looks straight at '" + pane.name() + "'.",
        "Turn '" + view.device().name() + "', or put it beside or above '" + pane.name() + "'.",
        Involved.devices(List.of(view.device().name()))
            .and(Involved.openings(List.of(pane.name()))));
  }
}
