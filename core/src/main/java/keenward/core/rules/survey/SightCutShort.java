package keenward.core.rules.survey;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import keenward.core.building.FloorGeometry;
import keenward.core.building.coverage.DetectorView;
import keenward.core.building.plane.Polygons;
import keenward.core.building.plane.SeenArea;
import keenward.core.plan.Furniture;
import keenward.core.plan.MissingFact;
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

/** Something close in front of a detector takes much of its sight. */
public final class SightCutShort implements Rule {

  private static final double NEAR_METRES = 1;
  private static final double MOST_SHARE = 1.0 / 3;

  /** What lies so near to a piece of furniture is its side. */
  private static final double TOUCHES_METRES = 0.01;

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.SURVEY, 6, "sight-cut-short", Severity.WARNING)
          .source(Source.practice())
          .purpose(
              "Looks for motion detectors of which more than a third of the opening angle ends within 1 m, at furniture,"
                  + " a wall or a pane.")
          .consequence(
              "The room behind is not watched though the data sheet covers it; what stands so close may also cause false"
                  + " alarms.")
          .limits(
              "Goes by the drawing. Curtains stand close to walls on purpose and are left out; so are ceiling patterns."
                  + " Furniture lower than 1.2 m hides nobody.")
          .parameter("nearer than", "1", "m")
          .parameter("more than", "a third", "of the angle")
          .remedy("Move or turn the detector, or clear what stands before it.")
          .broken(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Shop: { use: shop, outline: [[0, 0], [8, 0], [8, 6], [0, 6]] }
                  furniture:
                    Tall shelf: { outline: [[6.6, 4], [7.4, 4], [7.4, 5.6], [6.6, 5.6]], height: 2 m }
              devices:
                Shop motion: { kind: motion, wiring: wired, room: Shop, at: [7.9, 5.9], bearing: 225 deg, coverage: { pattern: fan, range: 12 m, angle: 90 deg } }
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
                  furniture:
                    Tall shelf: { outline: [[1, 4], [1.8, 4], [1.8, 5.6], [1, 5.6]], height: 2 m }
              devices:
                Shop motion: { kind: motion, wiring: wired, room: Shop, at: [7.9, 5.9], bearing: 225 deg, coverage: { pattern: fan, range: 12 m, angle: 90 deg } }
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
                  furniture:
                    Tall shelf: { outline: [[6.6, 4], [7.4, 4], [7.4, 5.6], [6.6, 5.6]], height: 1 m }
              devices:
                Shop motion: { kind: motion, wiring: wired, room: Shop, at: [7.9, 5.9], bearing: 225 deg, coverage: { pattern: fan, range: 12 m, angle: 90 deg } }
              zones:
                1: { name: Shop, response: instant, device: Shop motion }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    for (DetectorView view : input.views().views()) {
      if (view.isFan()) {
        report.judged();
        double share = nearShare(view.seen());
        if (share > MOST_SHARE) {
          report(input, view, share, report);
        }
      }
    }
    Set<String> known = input.views().byDevice().keySet();
    input.views().notAssessed().stream()
        .filter(missing -> !known.contains(missing.place().steps().getLast()))
        .findFirst()
        .ifPresent(missing ->
            report.notAssessed(
                new MissingFact(
                    missing.place(),
                    "whether anything stands close before it: " + missing.why(),
                    missing.lineToAdd())));
  }

  /** The share of the angle in which sight ends nearer than a metre. */
  private static double nearShare(SeenArea seen) {
    double near = 0;
    for (SeenArea.Piece piece : seen.edge()) {
      near += nearRadians(seen.eye(), piece);
    }
    return near / seen.spanRadians();
  }

  /** Of one piece of the edge, the angle within which it is nearer than a metre to the eye. */
  private static double nearRadians(Point eye, SeenArea.Piece piece) {
    return piece.radians()
        - piece.beyond(eye, NEAR_METRES).stream().mapToDouble(SeenArea.Piece::radians).sum();
  }

  private static void report(CheckInput input, DetectorView view, double share, Report report) {
    Optional<String> thing =
        input.building().findFloor(view.floor()).flatMap(floor -> inFront(floor, view.seen()));
    report.found(
        PlanPath.of("devices", view.device().name()),
        "Of the opening angle of '"
            + view.device().name()
            + "', "
            + Math.round(100 * share)
            + " % ends within 1 m"
            + thing.map(name -> ", mostly at '" + name + "'").orElse("")
            + ".",
        "Move or turn '" + view.device().name() + "', or clear what stands before it.",
        Involved.devices(List.of(view.device().name())).and(Involved.rooms(List.of(view.room()))));
  }

  /** The furniture at which most of the near sight ends. */
  private static Optional<String> inFront(FloorGeometry floor, SeenArea seen) {
    String most = null;
    double mostRadians = 0;
    for (Furniture thing : floor.floor().furniture()) {
      double radians = 0;
      for (SeenArea.Piece piece : seen.edge()) {
        Point middle = Polygons.along(piece.from(), piece.to(), 0.5);
        if (!piece.isArc()
            && Polygons.distanceToOutline(thing.outline(), middle) < TOUCHES_METRES) {
          radians += nearRadians(seen.eye(), piece);
        }
      }
      if (radians > mostRadians) {
        mostRadians = radians;
        most = thing.name();
      }
    }
    return Optional.ofNullable(most);
  }
}
