package keenward.drawing.floor;

import java.util.List;
import keenward.core.building.OpeningPlace;
import keenward.core.building.WallSegment;
import keenward.core.plan.EdgeSelector;
import keenward.core.plan.Fact;
import keenward.core.plan.Hinge;
import keenward.core.plan.Opening;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.Point;
import keenward.core.plan.Swing;
import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Palette;
import keenward.drawing.svg.Svg;

/** A short piece of wall with an opening, for the legend: the very same painting as on the plan. */
final class OpeningSample {

  private static final double SCALE = 12;

  private OpeningSample() {}

  static void paint(Svg svg, Palette palette, OpeningKind kind, Spot centre) {
    boolean single = kind == OpeningKind.DOOR || kind == OpeningKind.GATE;
    boolean swings = single || kind == OpeningKind.DOUBLE_DOOR;
    Spot wallAt = swings ? centre.plus(0, 6) : centre;
    svg.element(
        "path",
        "d",
        "M" + wallAt.plus(-13, 0) + "L" + wallAt.plus(13, 0),
        "stroke",
        palette.of(Ink.WALL),
        "stroke-width",
        4.5);
    Opening opening =
        new Opening(
            kind.word(),
            kind,
            new EdgeSelector("a", EdgeSelector.OUTSIDE, Fact.of(1)),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.of(Hinge.LEFT),
            Fact.of(Swing.IN),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing());
    WallSegment wall =
        new WallSegment(
            "",
            "a",
            EdgeSelector.OUTSIDE,
            new Point(-1, 0),
            new Point(1, 0),
            1,
            0,
            false,
            true,
            Fact.missing(),
            Fact.missing());
    double half = single ? 0.5 : 0.75;
    OpeningPlace place = new OpeningPlace(opening, wall, new Point(half, 0), new Point(-half, 0));
    OpeningShape shape =
        OpeningShape.of(place, new Frame(wallAt.x(), wallAt.y(), new Point(0, 0), SCALE, false));
    new OpeningPainter(svg, palette)
        .paint(
            new OpeningShape(
                place,
                shape.left(),
                shape.right(),
                shape.inward(),
                4.5,
                List.copyOf(shape.leaves())));
  }
}
