package keenward.drawing.floor;

import java.util.List;
import java.util.stream.Collectors;
import keenward.core.building.walking.SiteWalk;
import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Palette;
import keenward.drawing.svg.Svg;

/**
 * Draws walks as lines with a dot where they begin and a tip where they end. Lines differ in their
 * dashes too, for those who print without colour.
 */
final class WalkPainter {

  private static final double WIDTH = 1.9;
  private static final double TIP_PIXELS = 9;

  private final Svg svg;
  private final Palette palette;

  WalkPainter(Svg svg, Palette palette) {
    this.svg = svg;
    this.palette = palette;
  }

  void paint(FloorWalk part, Frame frame) {
    List<Spot> spots = frame.at(part.level().points());
    svg.open("g", "class", "walk " + part.kind().word(), "data-walk", part.numbered());
    svg.text("title", "Walk " + part.numbered() + ": " + part.title());
    line(spots, part.kind());
    Spot begin = spots.getFirst();
    svg.element("circle", "cx", begin.x(), "cy", begin.y(), "r", 2.6, "fill", palette.of(Ink.WALK));
    if (part.ends() && spots.size() > 1) {
      tip(spots.get(spots.size() - 2), spots.getLast());
    }
    svg.close();
  }

  void sample(SiteWalk.Kind kind, Spot at) {
    List<Spot> spots = List.of(at.plus(-11, 0), at.plus(10, 0));
    line(spots, kind);
    tip(spots.getFirst(), spots.getLast());
  }

  private void line(List<Spot> spots, SiteWalk.Kind kind) {
    String path = spots.stream().map(Spot::toString).collect(Collectors.joining("L", "M", ""));
    stroke(path, Ink.PAPER, 0.75, WIDTH + 2.4, "none");
    stroke(
        path,
        Ink.WALK,
        1,
        WIDTH,
        switch (kind) {
          case ENTRY, ASKED -> "none";
          case EXIT -> "8 3.5";
          case NIGHT -> "2 3";
        });
  }

  private void stroke(String path, Ink ink, double opacity, double width, String dashes) {
    svg.element(
        "path",
        "d",
        path,
        "fill",
        "none",
        "stroke",
        palette.of(ink),
        "stroke-opacity",
        opacity,
        "stroke-width",
        width,
        "stroke-linejoin",
        "round",
        "stroke-dasharray",
        dashes);
  }

  private void tip(Spot before, Spot end) {
    double x = end.x() - before.x();
    double y = end.y() - before.y();
    double length = Math.max(Math.hypot(x, y), 1e-9);
    double alongX = x / length * TIP_PIXELS;
    double alongY = y / length * TIP_PIXELS;
    svg.element(
        "path",
        "d",
        "M"
            + end
            + "L"
            + end.plus(-alongX + alongY * 0.4, -alongY - alongX * 0.4)
            + "L"
            + end.plus(-alongX - alongY * 0.4, -alongY + alongX * 0.4)
            + "Z",
        "fill",
        palette.of(Ink.WALK));
  }
}
