package keenward.drawing.floor;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import keenward.core.building.WallSegment;
import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Palette;
import keenward.drawing.svg.Svg;
import org.jspecify.annotations.Nullable;

/**
 * Paints walls, thin ones first so that thick ones close their ends; then the cores of hollow ones.
 */
final class WallPainter {

  /** Walls within this of upright or level end square, others round. */
  private static final double SLANT_PIXELS = 0.5;

  private static final List<WallLook> ORDER =
      List.of(
          WallLook.LOW,
          WallLook.GLASS,
          WallLook.LIGHT,
          WallLook.METAL,
          WallLook.PANEL,
          WallLook.INNER,
          WallLook.OUTER);

  private final Svg svg;
  private final Palette palette;

  WallPainter(Svg svg, Palette palette) {
    this.svg = svg;
    this.palette = palette;
  }

  void paint(List<WallSegment> walls, Frame frame) {
    Map<WallLook, StringBuilder> square = new EnumMap<>(WallLook.class);
    Map<WallLook, StringBuilder> round = new EnumMap<>(WallLook.class);
    for (WallSegment wall : walls) {
      Spot from = frame.at(wall.start());
      Spot to = frame.at(wall.end());
      boolean straight =
          Math.abs(from.x() - to.x()) < SLANT_PIXELS || Math.abs(from.y() - to.y()) < SLANT_PIXELS;
      (straight ? square : round)
          .computeIfAbsent(WallLook.of(wall), ignored -> new StringBuilder())
          .append('M')
          .append(from)
          .append('L')
          .append(to);
    }
    for (WallLook look : ORDER) {
      double width = look.pixels(frame.scale());
      body(look, square.get(look), width, "square");
      body(look, round.get(look), width, "round");
    }
    for (WallLook look : ORDER) {
      double width = look.pixels(frame.scale());
      core(look, square.get(look), width);
      core(look, round.get(look), width);
    }
  }

  /** One short piece of wall, for the legend. */
  void sample(WallLook look, Spot centre) {
    StringBuilder path = new StringBuilder("M" + centre.plus(-11, 0) + "L" + centre.plus(11, 0));
    double width = look.pixels(40);
    body(look, path, width, "butt");
    core(look, path, width);
  }

  private void body(WallLook look, @Nullable StringBuilder path, double width, String cap) {
    if (path != null) {
      svg.element(
          "path",
          "class",
          "wall",
          "d",
          path.toString(),
          "fill",
          "none",
          "stroke",
          palette.of(look.ink()),
          "stroke-width",
          width,
          "stroke-linecap",
          cap);
    }
  }

  private void core(WallLook look, @Nullable StringBuilder path, double width) {
    if (path == null || look.core() == WallLook.Core.NONE) {
      return;
    }
    Ink ink = look.core() == WallLook.Core.GLASS ? Ink.GLASS : Ink.PAPER;
    svg.element(
        "path",
        "d",
        path.toString(),
        "fill",
        "none",
        "stroke",
        palette.of(ink),
        "stroke-width",
        width - 2,
        "stroke-dasharray",
        look.core() == WallLook.Core.PAPER_DASHED ? "5 3" : "none");
  }
}
