package keenward.drawing.floor;

import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Palette;
import keenward.drawing.svg.Svg;

/** Paints openings: the gap in the wall, and what fills it. */
final class OpeningPainter {

  private final Svg svg;
  private final Palette palette;

  OpeningPainter(Svg svg, Palette palette) {
    this.svg = svg;
    this.palette = palette;
  }

  void paint(OpeningShape shape) {
    double half = shape.thickness() / 2;
    svg.element("path", "d", band(shape, half + 0.6), "fill", palette.of(Ink.PAPER));
    jambs(shape, half);
    switch (shape.place().opening().kind()) {
      case DOOR, DOUBLE_DOOR -> {
        if (shape.leaves().isEmpty()) {
          shutLeaf(shape);
        }
        shape.leaves().forEach(this::leaf);
      }
      case GATE -> {
        line(shape.left(), shape.right(), Ink.WALL, 1, "5 3");
        shape.leaves().forEach(this::leaf);
      }
      case SLIDING_DOOR -> slidingLeaves(shape);
      case DOORWAY -> {
        faces(shape, half, Ink.SWING, 0.8, "3 2.5");
      }
      case WINDOW -> {
        pane(shape, half, Ink.PAPER);
        line(shape.left(), shape.right(), Ink.WALL, 0.9, "");
      }
      case FIXED_WINDOW -> pane(shape, half, Ink.GLASS);
      case ROOF_WINDOW -> {
        pane(shape, half, Ink.PAPER);
        line(shape.left(), shape.right(), Ink.WALL, 1.2, "1.5 2.5");
      }
      case ROLLER_SHUTTER -> shutter(shape, half);
      case HATCH -> {
        pane(shape, half, Ink.PAPER);
        line(
            offset(shape, shape.left(), half),
            offset(shape, shape.right(), -half),
            Ink.WALL,
            0.9,
            "");
        line(
            offset(shape, shape.left(), -half),
            offset(shape, shape.right(), half),
            Ink.WALL,
            0.9,
            "");
      }
    }
  }

  /** A band of light under an opening. */
  void light(OpeningShape shape) {
    svg.element(
        "path",
        "d",
        band(shape, shape.thickness() / 2 + 5),
        "fill",
        palette.of(Ink.HIGHLIGHT),
        "stroke",
        palette.of(Ink.TEXT),
        "stroke-width",
        0.8,
        "stroke-dasharray",
        "3 2");
  }

  private static Spot offset(OpeningShape shape, Spot spot, double inward) {
    return spot.along(shape.inward(), inward);
  }

  private static String band(OpeningShape shape, double half) {
    return "M"
        + offset(shape, shape.left(), half)
        + "L"
        + offset(shape, shape.right(), half)
        + "L"
        + offset(shape, shape.right(), -half)
        + "L"
        + offset(shape, shape.left(), -half)
        + "Z";
  }

  private void jambs(OpeningShape shape, double half) {
    line(offset(shape, shape.left(), half), offset(shape, shape.left(), -half), Ink.WALL, 1, "");
    line(offset(shape, shape.right(), half), offset(shape, shape.right(), -half), Ink.WALL, 1, "");
  }

  private void faces(OpeningShape shape, double half, Ink ink, double width, String dashes) {
    line(offset(shape, shape.left(), half), offset(shape, shape.right(), half), ink, width, dashes);
    line(
        offset(shape, shape.left(), -half),
        offset(shape, shape.right(), -half),
        ink,
        width,
        dashes);
  }

  private void pane(OpeningShape shape, double half, Ink fill) {
    svg.element(
        "path",
        "d",
        band(shape, half - 0.3),
        "fill",
        palette.of(fill),
        "stroke",
        palette.of(Ink.WALL),
        "stroke-width",
        0.9);
  }

  private void shutLeaf(OpeningShape shape) {
    line(shape.left(), shape.right(), Ink.WALL, 1.8, "");
  }

  private void leaf(OpeningShape.Leaf leaf) {
    line(leaf.hinge(), leaf.open(), Ink.WALL, 1.5, "");
    String radius = Svg.number(leaf.width());
    svg.element(
        "path",
        "d",
        "M"
            + leaf.open()
            + "A"
            + radius
            + ","
            + radius
            + " 0 0 "
            + (leaf.shutsClockwise() ? 1 : 0)
            + " "
            + leaf.shut(),
        "fill",
        "none",
        "stroke",
        palette.of(Ink.SWING),
        "stroke-width",
        0.8);
  }

  private void slidingLeaves(OpeningShape shape) {
    double width = shape.left().distance(shape.right());
    Spot pastMiddle = shape.left().along(shape.alongWall(), width * 0.56);
    Spot beforeMiddle = shape.left().along(shape.alongWall(), width * 0.44);
    line(offset(shape, shape.left(), 1.4), offset(shape, pastMiddle, 1.4), Ink.WALL, 1.5, "");
    line(offset(shape, beforeMiddle, -1.4), offset(shape, shape.right(), -1.4), Ink.WALL, 1.5, "");
  }

  private void shutter(OpeningShape shape, double half) {
    double width = shape.left().distance(shape.right());
    StringBuilder slats = new StringBuilder();
    int count = Math.max(3, (int) (width / 3.5));
    for (int i = 1; i < count; i++) {
      Spot spot = shape.left().along(shape.alongWall(), width * i / count);
      slats
          .append('M')
          .append(offset(shape, spot, half))
          .append('L')
          .append(offset(shape, spot, -half));
    }
    pane(shape, half, Ink.PAPER);
    svg.element(
        "path",
        "d",
        slats.toString(),
        "stroke",
        palette.of(Ink.WALL),
        "stroke-width",
        0.8,
        "fill",
        "none");
  }

  private void line(Spot from, Spot to, Ink ink, double width, String dashes) {
    if (dashes.isEmpty()) {
      svg.element(
          "path",
          "d",
          "M" + from + "L" + to,
          "stroke",
          palette.of(ink),
          "stroke-width",
          width,
          "fill",
          "none");
    } else {
      svg.element(
          "path",
          "d",
          "M" + from + "L" + to,
          "stroke",
          palette.of(ink),
          "stroke-width",
          width,
          "stroke-dasharray",
          dashes,
          "fill",
          "none");
    }
  }
}
