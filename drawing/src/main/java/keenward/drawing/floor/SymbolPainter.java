package keenward.drawing.floor;

import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Palette;
import keenward.drawing.svg.Svg;

/** Paints a symbol: its outline, turned where it looks somewhere, and the upright mark inside. */
final class SymbolPainter {

  private static final double LINE_PIXELS = 1.4;

  private final Svg svg;
  private final Palette palette;

  SymbolPainter(Svg svg, Palette palette) {
    this.svg = svg;
    this.palette = palette;
  }

  void paint(Symbol symbol, Spot centre, double radius, double bearingDegrees, boolean dashed) {
    String ink = palette.of(symbol.ink());
    String paper = palette.of(Ink.PAPER);
    double line = LINE_PIXELS / radius;
    svg.open(
        "g",
        "transform",
        "translate("
            + Svg.number(centre.x())
            + " "
            + Svg.number(centre.y())
            + ") scale("
            + Svg.number(radius)
            + ")",
        "stroke-linecap",
        "round",
        "stroke-linejoin",
        "round");
    if (!symbol.outline().path().isEmpty()) {
      Object[] base = {
        "d",
        symbol.outline().path(),
        "fill",
        symbol.isSolid() ? ink : paper,
        "stroke",
        ink,
        "stroke-width",
        fine(line)
      };
      Object[] attributes = base;
      if (symbol.outline() == Symbol.Outline.DROP && bearingDegrees != 0) {
        attributes = and(attributes, "transform", "rotate(" + Svg.number(bearingDegrees) + ")");
      }
      if (dashed) {
        attributes =
            and(attributes, "stroke-dasharray", fine(2.4 / radius) + " " + fine(2.2 / radius));
      }
      svg.element("path", attributes);
    }
    String mark = symbol.isSolid() ? paper : ink;
    // The round part of a drop lies behind its tip.
    Object[] shift = {};
    if (symbol.outline() == Symbol.Outline.DROP) {
      double angle = Math.toRadians(bearingDegrees);
      shift =
          new Object[] {
            "transform",
            "translate(" + fine(-0.05 * Math.sin(angle)) + " " + fine(0.05 * Math.cos(angle)) + ")"
          };
    }
    if (!symbol.strokes().isEmpty()) {
      svg.element(
          "path",
          and(
              shift,
              "d",
              symbol.strokes(),
              "fill",
              "none",
              "stroke",
              mark,
              "stroke-width",
              fine(line)));
    }
    if (!symbol.fills().isEmpty()) {
      svg.element("path", and(shift, "d", symbol.fills(), "fill", mark));
    }
    svg.close();
  }

  private static Object[] and(Object[] attributes, Object... more) {
    Object[] all = new Object[attributes.length + more.length];
    System.arraycopy(attributes, 0, all, 0, attributes.length);
    System.arraycopy(more, 0, all, attributes.length, more.length);
    return all;
  }

  /** Three places, since these numbers are scaled up. */
  private static String fine(double value) {
    return Double.toString(Math.round(value * 1000) / 1000.0);
  }
}
