package keenward.drawing.voltage;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import keenward.drawing.load.LoadOptions;
import keenward.drawing.svg.Identifiers;
import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Lettering;
import keenward.drawing.svg.Palette;
import keenward.drawing.svg.Svg;

/**
 * Draws the voltages of a supply's cables over the length of cable from it: one line style a state,
 * each device as a dot on the last state's line, and its least voltage as a bar under or over it.
 */
public final class VoltageDrawing {
  private static final double LEFT_PIXELS = 46;
  private static final double RIGHT_PIXELS = 16;
  private static final double TOP_PIXELS = 14;
  private static final double PLOT_PIXELS = 210;
  private static final double AXIS_PIXELS = 40;
  private static final double ROW_PIXELS = 18;
  private static final double BAR_PIXELS = 9;
  private static final int MOST_TICKS = 8;
  private static final double[] STEPS = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};
  private static final List<String> DASHES = List.of("1.5 3", "6 3", "");

  private final VoltageProfile profile;
  private final LoadOptions options;
  private final Palette palette;
  private final Svg svg = new Svg();
  private final double mostMetres;
  private final double lowVolts;
  private final double highVolts;

  private VoltageDrawing(VoltageProfile profile, LoadOptions options) {
    this.profile = profile;
    this.options = options;
    palette = options.palette();
    List<VoltageProfile.Place> places =
        profile.stretches().stream().flatMap(each -> Stream.of(each.near(), each.far())).toList();
    mostMetres =
        Math.max(1, places.stream().mapToDouble(VoltageProfile.Place::metres).max().orElse(1));
    double[] volts =
        DoubleStream.concat(
                places.stream()
                    .flatMap(place -> place.volts().stream().flatMap(Optional::stream))
                    .mapToDouble(Double::doubleValue),
                profile.devices().stream()
                    .flatMap(device -> device.leastVolts().stream())
                    .mapToDouble(Double::doubleValue))
            .toArray();
    lowVolts = Math.floor(DoubleStream.of(volts).min().orElse(0));
    highVolts = Math.max(lowVolts + 1, Math.ceil(DoubleStream.of(volts).max().orElse(1)));
  }

  /** The drawing of one supply; of its options the width, colours and prefix of ids count. */
  public static String svg(VoltageProfile profile, LoadOptions options) {
    return new VoltageDrawing(profile, options).paint();
  }

  private String paint() {
    List<String> legend = new ArrayList<>(profile.states());
    legend.add("least voltage that a device needs");
    double height = TOP_PIXELS + PLOT_PIXELS + AXIS_PIXELS + legend.size() * ROW_PIXELS + 6;
    Identifiers ids = new Identifiers(options.idPrefix());
    String titleId = ids.of("title", "volts " + profile.supply());
    String describedId = ids.of("described", "volts " + profile.supply());
    svg.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "class",
        "voltage-drawing",
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
    svg.text("title", "Voltage along the cables of " + profile.supply(), "id", titleId);
    svg.text("desc", described(), "id", describedId);
    svg.element(
        "rect", "width", options.widthPixels(), "height", height, "fill", palette.of(Ink.PAPER));
    axes();
    for (VoltageProfile.Stretch stretch : profile.stretches()) {
      for (int state = 0; state < profile.states().size(); state++) {
        line(stretch, state);
      }
    }
    profile.devices().forEach(this::device);
    legend(legend);
    svg.close();
    return svg.toString();
  }

  private String described() {
    int last = profile.states().size() - 1;
    return profile.devices().stream()
        .min(Comparator.comparingDouble(device -> device.place().volts().get(last).orElse(0.0)))
        .map(device ->
            "Lowest with "
                + profile.states().get(last)
                + ": "
                + device.name()
                + ", "
                + device.place().volts().get(last).map(VoltageDrawing::volts).orElse("no voltage")
                + ".")
        .orElse("No device.");
  }

  private void axes() {
    double voltStep = step(highVolts - lowVolts);
    for (double volts = lowVolts; volts <= highVolts + voltStep / 2; volts += voltStep) {
      double y = y(volts);
      rule(LEFT_PIXELS, y, options.widthPixels() - RIGHT_PIXELS, y);
      text(volts(volts), LEFT_PIXELS - 6, y + 4, "end");
    }
    double metreStep = step(mostMetres);
    for (double metres = 0; metres <= mostMetres; metres += metreStep) {
      rule(x(metres), TOP_PIXELS, x(metres), TOP_PIXELS + PLOT_PIXELS);
      text(number(metres), x(metres), TOP_PIXELS + PLOT_PIXELS + 15, "middle");
    }
    text(
        "metres of cable from " + profile.supply(),
        options.widthPixels() - RIGHT_PIXELS,
        TOP_PIXELS + PLOT_PIXELS + 31,
        "end");
  }

  private void line(VoltageProfile.Stretch stretch, int state) {
    Optional<Double> near = stretch.near().volts().get(state);
    Optional<Double> far = stretch.far().volts().get(state);
    if (near.isPresent() && far.isPresent()) {
      stroke(
          x(stretch.near().metres()),
          y(near.get()),
          x(stretch.far().metres()),
          y(far.get()),
          state);
    }
  }

  private void stroke(double x1, double y1, double x2, double y2, int state) {
    boolean isLast = state == profile.states().size() - 1;
    svg.element(
        "path",
        "d",
        "M" + Svg.number(x1) + "," + Svg.number(y1) + "L" + Svg.number(x2) + "," + Svg.number(y2),
        "stroke",
        palette.of(isLast ? Ink.TEXT : Ink.INTRUSION),
        "stroke-width",
        isLast ? 2.0 : 1.4,
        "stroke-dasharray",
        DASHES.get(Math.min(state, DASHES.size() - 1)),
        "fill",
        "none");
  }

  private void device(VoltageProfile.Device device) {
    int last = profile.states().size() - 1;
    double x = x(device.place().metres());
    Optional<Double> volts = device.place().volts().get(last);
    boolean isLow =
        device.leastVolts().filter(least -> volts.isEmpty() || volts.get() < least).isPresent();
    device.leastVolts().ifPresent(least -> bar(x, y(least), isLow));
    volts.ifPresent(found ->
        svg.element(
            "circle",
            "cx",
            x,
            "cy",
            y(found),
            "r",
            3.4,
            "fill",
            palette.of(isLow ? Ink.ERROR : Ink.TEXT)));
    if (isLow) {
      boolean isRight = x > options.widthPixels() / 2;
      svg.label(
          Lettering.fit(device.name(), 11, true, options.widthPixels() / 2 - LEFT_PIXELS),
          x + (isRight ? -7 : 7),
          device.leastVolts().map(this::y).orElseThrow() - 6,
          11,
          true,
          isRight ? "end" : "start",
          palette.of(Ink.ERROR));
    }
  }

  private void bar(double x, double y, boolean isLow) {
    svg.element(
        "path",
        "d",
        "M"
            + Svg.number(x - BAR_PIXELS / 2)
            + ","
            + Svg.number(y)
            + "H"
            + Svg.number(x + BAR_PIXELS / 2),
        "stroke",
        palette.of(isLow ? Ink.ERROR : Ink.PLANT),
        "stroke-width",
        2.4);
  }

  private void legend(List<String> words) {
    double y = TOP_PIXELS + PLOT_PIXELS + AXIS_PIXELS + 10;
    for (int row = 0; row < words.size(); row++) {
      if (row < profile.states().size()) {
        stroke(LEFT_PIXELS, y - 4, LEFT_PIXELS + 30, y - 4, row);
      } else {
        bar(LEFT_PIXELS + 15, y - 4, false);
      }
      text(words.get(row), LEFT_PIXELS + 40, y, "start");
      y += ROW_PIXELS;
    }
  }

  private void rule(double x1, double y1, double x2, double y2) {
    svg.element(
        "path",
        "d",
        "M" + Svg.number(x1) + "," + Svg.number(y1) + "L" + Svg.number(x2) + "," + Svg.number(y2),
        "stroke",
        palette.of(Ink.RULE),
        "stroke-width",
        1.0);
  }

  private void text(String words, double x, double y, String anchor) {
    svg.label(words, x, y, 11, false, anchor, palette.of(Ink.QUIET));
  }

  private double x(double metres) {
    return LEFT_PIXELS + metres / mostMetres * (options.widthPixels() - LEFT_PIXELS - RIGHT_PIXELS);
  }

  private double y(double volts) {
    return TOP_PIXELS + (highVolts - volts) / (highVolts - lowVolts) * PLOT_PIXELS;
  }

  private static double step(double range) {
    for (double step : STEPS) {
      if (range / step <= MOST_TICKS) {
        return step;
      }
    }
    return range / MOST_TICKS;
  }

  private static String volts(double volts) {
    return number(volts) + " V";
  }

  private static String number(double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }
}
