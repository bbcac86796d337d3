package keenward.drawing.trace;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import keenward.core.building.BackdropPlace;
import keenward.core.plan.Backdrop;
import keenward.core.plan.DrawingUnit;
import keenward.core.plan.Floor;
import keenward.core.plan.PicturePoint;
import keenward.core.plan.Point;
import keenward.core.plan.Room;
import keenward.core.quantities.Length;
import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Lettering;
import keenward.drawing.svg.Palette;
import keenward.drawing.svg.Svg;

/**
 * Draws the picture of a floor under a grid: in the floor's own unit and with its rooms where the
 * scale of the picture is known, else in the picture's units, so that two places can be read off.
 * The svg element carries what a page needs to tell the coordinates of a place (see {@code
 * trace.js}).
 */
public final class TraceDrawing {

  private static final double WIDTH_PIXELS = 960;
  private static final double MOST_HEIGHT_PIXELS = 1600;
  private static final double LEFT_PIXELS = 46;
  private static final double TOP_PIXELS = 24;
  private static final double RIM_PIXELS = 20;
  private static final double LETTERS_PIXELS = 11;
  private static final double LEAST_LINE_PIXELS = 44;
  private static final double METRES_A_FOOT = 0.3048;

  /** A picture is light, whatever the page about it. */
  private static final Palette INK = Palette.PRINT;

  private final Floor floor;
  private final TracePicture picture;
  private final Grid grid;
  private final Svg svg = new Svg();

  private TraceDrawing(Floor floor, TracePicture picture, Grid grid) {
    this.floor = floor;
    this.picture = picture;
    this.grid = grid;
  }

  /** The drawing of a floor that has a backdrop, whose picture this is. */
  public static String svg(Floor floor, TracePicture picture) {
    Backdrop backdrop =
        floor.backdrop().find().orElseThrow(() -> new IllegalArgumentException("no backdrop"));
    Optional<BackdropPlace> place = BackdropPlace.of(backdrop);
    Grid grid =
        place
            .map(known -> Grid.measured(floor, picture, known))
            .orElseGet(() -> Grid.bare(picture));
    return new TraceDrawing(floor, picture, grid).paint(backdrop);
  }

  /**
   * Coordinates and where they are drawn: up when the floor's, down when the picture's.
   *
   * @param unit m, ft, px or pt
   * @param west least coordinate to the right
   * @param south least coordinate upwards; for a picture, minus its height
   * @param pixels how many a unit takes
   * @param width of the area, in units
   * @param height of the area, in units
   * @param place where the picture lies; empty in the picture's own units
   */
  private record Grid(
      String unit,
      double west,
      double south,
      double pixels,
      double width,
      double height,
      Optional<BackdropPlace> place) {

    static Grid bare(TracePicture picture) {
      return of(picture.unit(), 0, -picture.height(), picture.width(), 0, Optional.empty());
    }

    static Grid measured(Floor floor, TracePicture picture, BackdropPlace place) {
      double unit = floor.unit() == DrawingUnit.FEET ? METRES_A_FOOT : 1;
      List<Point> corners =
          List.of(
              place.onFloor(new PicturePoint(0, 0)),
              place.onFloor(new PicturePoint(picture.width(), 0)),
              place.onFloor(new PicturePoint(picture.width(), picture.height())),
              place.onFloor(new PicturePoint(0, picture.height())));
      return of(
          floor.unit() == DrawingUnit.FEET ? "ft" : "m",
          corners.stream().mapToDouble(Point::xMetres).min().orElse(0) / unit,
          corners.stream().mapToDouble(Point::yMetres).min().orElse(0) / unit,
          corners.stream().mapToDouble(Point::xMetres).max().orElse(0) / unit,
          corners.stream().mapToDouble(Point::yMetres).max().orElse(0) / unit,
          Optional.of(place));
    }

    private static Grid of(
        String unit,
        double west,
        double south,
        double east,
        double north,
        Optional<BackdropPlace> place) {
      double width = east - west;
      double height = north - south;
      double pixels =
          Math.min(
              (WIDTH_PIXELS - LEFT_PIXELS - RIM_PIXELS) / width,
              (MOST_HEIGHT_PIXELS - TOP_PIXELS - RIM_PIXELS) / height);
      return new Grid(unit, west, south, pixels, width, height, place);
    }

    double x(double right) {
      return LEFT_PIXELS + (right - west) * pixels;
    }

    double y(double up) {
      return TOP_PIXELS + (south + height - up) * pixels;
    }

    double unitMetres() {
      return unit.equals("ft") ? METRES_A_FOOT : 1;
    }

    String at(Point place) {
      return Svg.number(x(place.xMetres() / unitMetres()))
          + " "
          + Svg.number(y(place.yMetres() / unitMetres()));
    }

    /** Where a place of the picture is drawn. */
    String at(PicturePoint point) {
      return place
          .map(known -> at(known.onFloor(point)))
          .orElseGet(() -> Svg.number(x(point.right())) + " " + Svg.number(y(-point.down())));
    }

    /** Between lines: 1, 2 or 5 times a power of ten. */
    double step() {
      double least = LEAST_LINE_PIXELS / pixels;
      double power = Math.pow(10, Math.floor(Math.log10(least)));
      for (int times : List.of(1, 2, 5)) {
        if (power * times >= least) {
          return power * times;
        }
      }
      return power * 10;
    }

    /** To what a place is rounded that is pointed at. */
    double rounding() {
      return switch (unit) {
        case "m" -> 0.01;
        case "ft" -> 0.05;
        default -> 1;
      };
    }
  }

  private String paint(Backdrop backdrop) {
    double width = Math.ceil(LEFT_PIXELS + grid.width() * grid.pixels() + RIM_PIXELS);
    double height = Math.ceil(TOP_PIXELS + grid.height() * grid.pixels() + RIM_PIXELS);
    boolean isMeasured = grid.place().isPresent();
    svg.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "class",
        "trace-drawing",
        "role",
        "img",
        "aria-label",
        "Picture of " + floor.name() + " with a grid in " + grid.unit(),
        "viewBox",
        "0 0 " + Svg.number(width) + " " + Svg.number(height),
        "width",
        width,
        "height",
        height,
        "font-family",
        Lettering.FACES,
        "data-unit",
        grid.unit(),
        "data-zero-x",
        exact(grid.x(0)),
        "data-zero-y",
        exact(grid.y(0)),
        "data-pixels-right",
        exact(grid.pixels()),
        "data-pixels-down",
        exact(isMeasured ? -grid.pixels() : grid.pixels()),
        "data-rounding",
        exact(grid.rounding()));
    svg.element("rect", "width", width, "height", height, "fill", INK.of(Ink.PAPER));
    svg.element(
        "image",
        "href",
        picture.dataUri(),
        "width",
        picture.width(),
        "height",
        picture.height(),
        "preserveAspectRatio",
        "none",
        "transform",
        transform());
    lines(width, height);
    if (isMeasured) {
      rooms();
    }
    points(backdrop);
    svg.close();
    return svg.toString();
  }

  /** From the units of the picture to pixels of the drawing. */
  private String transform() {
    double scale = grid.pixels();
    double turn = 0;
    if (grid.place().isPresent()) {
      scale *= grid.place().get().metresPerUnit() / grid.unitMetres();
      turn = grid.place().get().turnRadians();
    }
    return "translate("
        + grid.at(new PicturePoint(0, 0))
        + ") rotate("
        + exact(-Math.toDegrees(turn))
        + ") scale("
        + exact(scale)
        + ")";
  }

  private void lines(double width, double height) {
    double step = grid.step();
    boolean isMeasured = grid.place().isPresent();
    for (double at = Math.ceil(grid.west() / step) * step;
        at <= grid.west() + grid.width() + 1e-9;
        at += step) {
      line(grid.x(at), TOP_PIXELS, grid.x(at), height - RIM_PIXELS);
      label(at, grid.x(at), TOP_PIXELS - 8, "middle");
    }
    for (double at = Math.ceil(grid.south() / step) * step;
        at <= grid.south() + grid.height() + 1e-9;
        at += step) {
      line(LEFT_PIXELS, grid.y(at), width - RIM_PIXELS, grid.y(at));
      label(isMeasured ? at : -at, LEFT_PIXELS - 6, grid.y(at) + 4, "end");
    }
    svg.label(grid.unit(), 6, TOP_PIXELS - 8, LETTERS_PIXELS, true, "start", INK.of(Ink.TEXT));
  }

  private void line(double fromX, double fromY, double toX, double toY) {
    svg.element(
        "line",
        "x1",
        fromX,
        "y1",
        fromY,
        "x2",
        toX,
        "y2",
        toY,
        "stroke",
        INK.of(Ink.SEEN),
        "stroke-width",
        0.7,
        "stroke-opacity",
        0.55);
  }

  private void label(double value, double x, double y, String anchor) {
    svg.label(plain(value), x, y, LETTERS_PIXELS, false, anchor, INK.of(Ink.TEXT));
  }

  private void rooms() {
    for (Room room : floor.rooms()) {
      if (room.outline().size() >= 3) {
        svg.element(
            "path",
            "class",
            "traced",
            "d",
            "M" + room.outline().stream().map(grid::at).collect(Collectors.joining("L")) + "Z",
            "data-corners",
            room.outline().stream()
                .map(corner ->
                    exact(corner.xMetres() / grid.unitMetres())
                        + ","
                        + exact(corner.yMetres() / grid.unitMetres()))
                .collect(Collectors.joining(" ")),
            "fill",
            INK.of(Ink.SEEN),
            "fill-opacity",
            0.12,
            "stroke",
            INK.of(Ink.WALK),
            "stroke-width",
            2);
        // In a corner, since the picture's own words stand in the middle.
        Point corner = upperLeft(room.outline());
        svg.text(
            "text",
            room.name(),
            "x",
            grid.x(corner.xMetres() / grid.unitMetres()) + 6,
            "y",
            grid.y(corner.yMetres() / grid.unitMetres()) + 16,
            "font-size",
            12.0,
            "font-weight",
            "bold",
            "fill",
            INK.of(Ink.WALK),
            "stroke",
            INK.of(Ink.PAPER),
            "stroke-width",
            3.0,
            "paint-order",
            "stroke");
      }
    }
  }

  private static Point upperLeft(List<Point> outline) {
    return outline.stream()
        .max(Comparator.comparingDouble(corner -> corner.yMetres() - corner.xMetres()))
        .orElseThrow();
  }

  private void points(Backdrop backdrop) {
    if (backdrop.points().size() != 2) {
      return;
    }
    String from = grid.at(backdrop.points().get(0));
    String to = grid.at(backdrop.points().get(1));
    svg.open("g", "class", "measured");
    svg.text(
        "title",
        "The two places of the picture"
            + backdrop
                .distance()
                .map(Length::written)
                .find()
                .map(length -> ", " + length + " apart")
                .orElse(""));
    svg.element(
        "path",
        "d",
        "M" + from + "L" + to,
        "stroke",
        INK.of(Ink.ERROR),
        "stroke-width",
        1.2,
        "stroke-dasharray",
        "6 4",
        "fill",
        "none");
    for (String end : List.of(from, to)) {
      String[] at = end.split(" ", -1);
      svg.element(
          "circle",
          "cx",
          at[0],
          "cy",
          at[1],
          "r",
          5.0,
          "fill",
          "none",
          "stroke",
          INK.of(Ink.ERROR),
          "stroke-width",
          2.0);
    }
    svg.close();
  }

  private static String exact(double value) {
    String text = String.format(Locale.ROOT, "%.7f", value);
    return text.replaceFirst("[.]?0+$", "").replaceFirst("^-0$", "0");
  }

  private static String plain(double value) {
    return new BigDecimal(exact(value)).stripTrailingZeros().toPlainString();
  }
}
