package keenward.drawing.graph;

import java.math.BigDecimal;
import java.math.RoundingMode;
import keenward.drawing.load.LoadOptions;
import keenward.drawing.svg.Identifiers;
import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Palette;
import keenward.drawing.svg.Svg;

/** A graph of voltages over something that starts at 0: its frame, axes and scales. */
public final class VoltageGraph {
  private static final int MOST_TICKS = 8;
  private static final double[] STEPS = {
    0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000
  };

  private final Svg svg = new Svg();
  private final LoadOptions options;
  private final Palette palette;
  private final Frame frame;
  private final double most;
  private final double lowVolts;
  private final double highVolts;

  /**
   * Where the graph is on its drawing, in pixels.
   *
   * @param left from the left edge
   * @param right from the right edge
   * @param top from the upper edge
   * @param height of the graph itself
   * @param axis height of the numbers and words below it
   */
  public record Frame(double left, double right, double top, double height, double axis) {}

  /**
   * A graph.
   *
   * @param options of these the width, colours and prefix of ids count
   * @param most where its lower axis ends, more than 0
   * @param lowVolts voltage at its foot
   * @param highVolts voltage at its top, more than that at its foot
   */
  public VoltageGraph(
      LoadOptions options, Frame frame, double most, double lowVolts, double highVolts) {
    this.options = options;
    this.frame = frame;
    this.most = most;
    this.lowVolts = lowVolts;
    this.highVolts = highVolts;
    palette = options.palette();
  }

  /**
   * Opens the drawing.
   *
   * @param kind class of the drawing
   * @param idName what its ids are made of
   * @param described what it shows, for those who do not see it
   * @param belowPixels height of what is drawn below the axis
   */
  public void open(String kind, String idName, String title, String described, double belowPixels) {
    double height = below() + belowPixels;
    Identifiers ids = new Identifiers(options.idPrefix());
    String titleId = ids.of("title", idName);
    String describedId = ids.of("described", idName);
    svg.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "class",
        kind,
        "role",
        "img",
        "aria-labelledby",
        titleId + " " + describedId,
        "viewBox",
        "0 0 " + Svg.number(options.widthPixels()) + " " + Svg.number(height),
        "width",
        Math.floor(options.widthPixels()),
        "height",
        Math.ceil(height),
        "font-family",
        options.faces());
    svg.text("title", title, "id", titleId);
    svg.text("desc", described, "id", describedId);
    svg.element(
        "rect", "width", options.widthPixels(), "height", height, "fill", palette.of(Ink.PAPER));
  }

  /** Draws both axes with their lines and numbers. */
  public void axes(String words) {
    double voltStep = step(highVolts - lowVolts);
    for (double volts = lowVolts; volts <= highVolts + voltStep / 2; volts += voltStep) {
      line(flat(volts), Ink.RULE, 1);
      text(number(volts) + " V", frame.left() - 6, y(volts) + 4, "end", Ink.QUIET);
    }
    double step = step(most);
    for (double at = 0; at <= most + 1e-9; at += step) {
      line(upright(at), Ink.RULE, 1);
      text(number(at), x(at), foot() + 15, "middle", Ink.QUIET);
    }
    text(
        words, options.widthPixels() - frame.right(), foot() + frame.axis() - 10, "end", Ink.QUIET);
  }

  /** The way over the whole width at a voltage. */
  public String flat(double volts) {
    return "M"
        + Svg.number(frame.left())
        + ","
        + Svg.number(y(volts))
        + "H"
        + Svg.number(options.widthPixels() - frame.right());
  }

  /** The way over the whole height. */
  public String upright(double at) {
    return "M"
        + Svg.number(x(at))
        + ","
        + Svg.number(frame.top())
        + "v"
        + Svg.number(frame.height());
  }

  /** A full line. */
  public void line(String path, Ink ink, double width) {
    svg.element(
        "path", "d", path, "stroke", palette.of(ink), "stroke-width", width, "fill", "none");
  }

  /** A line in dashes; full where there are none. */
  public void dashed(String path, Ink ink, double width, String dashes) {
    svg.element(
        "path",
        "d",
        path,
        "stroke",
        palette.of(ink),
        "stroke-width",
        width,
        "stroke-dasharray",
        dashes.isEmpty() ? "none" : dashes,
        "fill",
        "none");
  }

  /** Words in the size of the axes. */
  public void text(String words, double x, double y, String anchor, Ink ink) {
    svg.label(words, x, y, 11, false, anchor, palette.of(ink));
  }

  /** Where something is from the left. */
  public double x(double at) {
    return frame.left() + at / most * (options.widthPixels() - frame.left() - frame.right());
  }

  /** Where a voltage is from above. */
  public double y(double volts) {
    return frame.top() + (highVolts - volts) / (highVolts - lowVolts) * frame.height();
  }

  /** The foot of the graph. */
  public double foot() {
    return frame.top() + frame.height();
  }

  /** Where the numbers and words of the axis end. */
  public double below() {
    return foot() + frame.axis();
  }

  /** For what only one drawing has. */
  public Svg svg() {
    return svg;
  }

  /** The colours. */
  public Palette palette() {
    return palette;
  }

  /** Closes the drawing and gives its text. */
  public String close() {
    svg.close();
    return svg.toString();
  }

  private static double step(double range) {
    for (double step : STEPS) {
      if (range / step <= MOST_TICKS) {
        return step;
      }
    }
    return range / MOST_TICKS;
  }

  /** A number with at most two decimals. */
  public static String number(double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }
}
