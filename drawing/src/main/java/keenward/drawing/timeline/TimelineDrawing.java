package keenward.drawing.timeline;

import java.util.List;
import java.util.Locale;
import keenward.drawing.svg.Identifiers;
import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Lettering;
import keenward.drawing.svg.Palette;
import keenward.drawing.svg.Svg;

/**
 * Draws a timeline: a track for each lane, a mark or a bar for each row, its words beside it. Time
 * runs down the page, so that it reads on a phone as well.
 */
public final class TimelineDrawing {

  private static final double BASELINE = 0.36;

  private final TimelineLayout layout;
  private final TimelineOptions options;
  private final Palette palette;
  private final Svg svg = new Svg();

  private TimelineDrawing(TimelineLayout layout, TimelineOptions options) {
    this.layout = layout;
    this.options = options;
    palette = options.palette();
  }

  /**
   * The drawing. Lanes stand in the order in which rows first name them; rows are sorted by time.
   *
   * @param rows what happens
   * @param options how it is drawn
   */
  public static String svg(List<TimelineRow> rows, TimelineOptions options) {
    return new TimelineDrawing(TimelineLayout.of(rows, options), options).paint();
  }

  private String paint() {
    // Whole pixels: a PDF renderer reads no other size.
    double height = Math.ceil(layout.bottom() + TimelineLayout.MARGIN_PIXELS);
    Identifiers ids = new Identifiers(options.idPrefix());
    String titleId = ids.of("title", options.title());
    String describedId = ids.of("described", options.title());
    svg.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "class",
        "timeline-drawing",
        "role",
        "img",
        "aria-labelledby",
        titleId + " " + describedId,
        "viewBox",
        "0 0 " + Svg.number(options.widthPixels()) + " " + Svg.number(height),
        "width",
        Math.floor(options.widthPixels()),
        "height",
        height,
        "font-family",
        options.faces());
    svg.text("title", options.title(), "id", titleId);
    svg.text(
        "desc",
        "Timeline of "
            + layout.lines().size()
            + " events in the lanes "
            + String.join(", ", layout.lanes().keySet())
            + ".",
        "id",
        describedId);
    svg.element(
        "rect", "width", options.widthPixels(), "height", height, "fill", palette.of(Ink.PAPER));
    double room = options.widthPixels() - 2 * TimelineLayout.MARGIN_PIXELS;
    text(
        Lettering.fit(options.title(), 16, true, room),
        TimelineLayout.MARGIN_PIXELS,
        26,
        16,
        true,
        Ink.TEXT,
        "start");
    lanes();
    times();
    layout.lines().forEach(this::line);
    svg.close();
    return svg.toString();
  }

  /** Lane names step down towards the tracks, each with a line to its own. */
  private void lanes() {
    double y = TimelineLayout.TITLE_PIXELS + 8;
    for (var lane : layout.lanes().entrySet()) {
      double x = lane.getValue();
      svg.element(
          "path",
          "d",
          "M"
              + point(layout.textLeft() - 4, y)
              + "L"
              + point(x + 4, y)
              + "Q"
              + point(x, y)
              + " "
              + point(x, y + 4)
              + "L"
              + point(x, layout.bottom()),
          "fill",
          "none",
          "stroke",
          palette.of(Ink.RULE),
          "stroke-width",
          1);
      double room = options.widthPixels() - TimelineLayout.MARGIN_PIXELS - layout.textLeft();
      text(
          Lettering.fit(lane.getKey(), 11, true, room),
          layout.textLeft(),
          y + 11 * BASELINE,
          11,
          true,
          Ink.QUIET,
          "start");
      y += TimelineLayout.LANE_NAME_PIXELS;
    }
  }

  private void times() {
    double right = TimelineLayout.MARGIN_PIXELS + 42;
    for (TimelineLayout.Time time : layout.times()) {
      text(time.text(), right, time.y() + 11 * BASELINE, 11, true, Ink.QUIET, "end");
      svg.element(
          "path",
          "d",
          "M" + point(right + 6, time.y()) + "L" + point(layout.textLeft() - 6, time.y()),
          "stroke",
          palette.of(Ink.RULE),
          "stroke-width",
          0.6,
          "stroke-dasharray",
          "1 3");
    }
  }

  private void line(TimelineLayout.Line line) {
    TimelineRow row = line.row();
    Double x = layout.lanes().get(row.lane());
    if (x == null) {
      throw new IllegalStateException("no track for lane " + row.lane());
    }
    svg.open("g", "class", "event " + row.kind().name().toLowerCase(Locale.ROOT));
    svg.text(
        "title",
        TimelineLayout.clock(row.seconds())
            + (row.isSpan() ? " to " + TimelineLayout.clock(row.untilSeconds()) : "")
            + " "
            + row.lane()
            + ": "
            + row.label());
    if (row.isSpan()) {
      svg.element(
          "rect",
          "x",
          x - 4,
          "y",
          line.y(),
          "width",
          8.0,
          "height",
          Math.max(2, line.endY() - line.y()),
          "rx",
          3.0,
          "fill",
          palette.of(ink(row.kind())),
          "fill-opacity",
          0.28,
          "stroke",
          palette.of(ink(row.kind())),
          "stroke-width",
          1);
    }
    mark(row.kind(), x, line.y());
    for (int i = 0; i < line.labels().size(); i++) {
      text(
          line.labels().get(i),
          layout.textLeft(),
          line.lineY(i) + TimelineLayout.LABEL_SIZE * BASELINE,
          TimelineLayout.LABEL_SIZE,
          TimelineLayout.isBold(row),
          Ink.TEXT,
          "start");
    }
    for (int i = 0; i < line.reasons().size(); i++) {
      text(
          line.reasons().get(i),
          layout.textLeft(),
          line.lineY(line.labels().size() + i) + TimelineLayout.REASON_SIZE * BASELINE,
          TimelineLayout.REASON_SIZE,
          false,
          Ink.QUIET,
          "start");
    }
    svg.close();
  }

  private static Ink ink(TimelineRow.Kind kind) {
    return switch (kind) {
      case ACTION -> Ink.TEXT;
      case CHANGE -> Ink.INTRUSION;
      case WARNING -> Ink.WARNING;
      case ALARM -> Ink.ERROR;
      case SIGNAL -> Ink.PLANT;
    };
  }

  /**
   * Disc for a person, small ring for a change, triangle for a warning, filled diamond for an
   * alarm, arrow for a signal.
   */
  private void mark(TimelineRow.Kind kind, double x, double y) {
    String ink = palette.of(ink(kind));
    String paper = palette.of(Ink.PAPER);
    switch (kind) {
      case ACTION -> svg.element("circle", "cx", x, "cy", y, "r", 4.6, "fill", ink);
      case CHANGE ->
          svg.element(
              "circle",
              "cx",
              x,
              "cy",
              y,
              "r",
              3.8,
              "fill",
              paper,
              "stroke",
              ink,
              "stroke-width",
              1.8);
      case WARNING ->
          path(
              "M" + point(x, y - 6) + "L" + point(x + 6, y + 5) + "L" + point(x - 6, y + 5) + "Z",
              paper,
              ink);
      case ALARM ->
          path(
              "M"
                  + point(x, y - 7)
                  + "L"
                  + point(x + 7, y)
                  + "L"
                  + point(x, y + 7)
                  + "L"
                  + point(x - 7, y)
                  + "Z",
              ink,
              ink);
      case SIGNAL ->
          path(
              "M"
                  + point(x - 5, y - 5)
                  + "L"
                  + point(x + 1, y - 5)
                  + "L"
                  + point(x + 6, y)
                  + "L"
                  + point(x + 1, y + 5)
                  + "L"
                  + point(x - 5, y + 5)
                  + "Z",
              ink,
              ink);
    }
  }

  private void path(String path, String fill, String stroke) {
    svg.element(
        "path",
        "d",
        path,
        "fill",
        fill,
        "stroke",
        stroke,
        "stroke-width",
        1.6,
        "stroke-linejoin",
        "round");
  }

  private void text(
      String text, double x, double y, double size, boolean bold, Ink ink, String anchor) {
    svg.label(text, x, y, size, bold, anchor, palette.of(ink));
  }

  private static String point(double x, double y) {
    return Svg.number(x) + "," + Svg.number(y);
  }
}
