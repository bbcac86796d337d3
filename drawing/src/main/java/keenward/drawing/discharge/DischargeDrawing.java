package keenward.drawing.discharge;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import keenward.drawing.load.LoadOptions;
import keenward.drawing.svg.Identifiers;
import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Lettering;
import keenward.drawing.svg.Palette;
import keenward.drawing.svg.Svg;

/**
 * Draws the voltage of a battery over the hours of a mains failure. What happens is numbered on the
 * curve and told below it.
 */
public final class DischargeDrawing {
  private static final double LEFT_PIXELS = 50;
  private static final double RIGHT_PIXELS = 18;
  private static final double TOP_PIXELS = 26;
  private static final double PLOT_PIXELS = 200;
  private static final double AXIS_PIXELS = 42;
  private static final double ROW_PIXELS = 18;
  private static final double MARK_PIXELS = 8;
  private static final int MOST_TICKS = 8;
  private static final double[] STEPS = {
    0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000
  };

  private final DischargeProfile profile;
  private final LoadOptions options;
  private final Palette palette;
  private final Svg svg = new Svg();
  private final double mostHours;
  private final double lowVolts;
  private final double highVolts;

  private DischargeDrawing(DischargeProfile profile, LoadOptions options) {
    this.profile = profile;
    this.options = options;
    palette = options.palette();
    mostHours =
        Math.max(
            Math.max(profile.wantedHours(), 0.1),
            profile.points().stream().mapToDouble(DischargeProfile.Point::hours).max().orElse(1));
    double least =
        profile.points().stream().mapToDouble(DischargeProfile.Point::volts).min().orElse(0);
    double most =
        profile.points().stream().mapToDouble(DischargeProfile.Point::volts).max().orElse(1);
    lowVolts = Math.floor(Math.min(least, profile.cutOffVolts()) - 0.25);
    highVolts = Math.ceil(Math.max(most, profile.cutOffVolts()));
  }

  /** The drawing of one supply; of its options the width, colours and prefix of ids count. */
  public static String svg(DischargeProfile profile, LoadOptions options) {
    return new DischargeDrawing(profile, options).paint();
  }

  private String paint() {
    int rows = profile.marks().size() + 2 + (profile.wantedHours() > 0 ? 1 : 0);
    double height = TOP_PIXELS + PLOT_PIXELS + AXIS_PIXELS + rows * ROW_PIXELS + 8;
    Identifiers ids = new Identifiers(options.idPrefix());
    String titleId = ids.of("title", "discharge " + profile.supply());
    String describedId = ids.of("described", "discharge " + profile.supply());
    svg.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "class",
        "discharge-drawing",
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
    svg.text("title", "Battery of " + profile.supply() + " in a mains failure", "id", titleId);
    svg.text(
        "desc",
        String.join("; ", profile.marks().stream().map(DischargeProfile.Mark::what).toList()),
        "id",
        describedId);
    svg.element(
        "rect", "width", options.widthPixels(), "height", height, "fill", palette.of(Ink.PAPER));
    axes();
    path(flat(profile.cutOffVolts()), Ink.ERROR, 1.2, "7 3 1.5 3");
    if (profile.wantedHours() > 0) {
      path(upright(), Ink.PLANT, 1.4, "2 3");
    }
    path(curve(profile.points()), Ink.TEXT, 2, "");
    for (int index = 0; index < profile.marks().size(); index++) {
      DischargeProfile.Mark mark = profile.marks().get(index);
      // Neighbours go up and down in turn, so that their numbers do not cover each other.
      double lift = MARK_PIXELS + 5 + index % 3 * 2 * MARK_PIXELS;
      badge(x(mark.hours()), Math.max(MARK_PIXELS + 1, y(mark.volts()) - lift), index, mark);
      svg.element(
          "circle",
          "cx",
          x(mark.hours()),
          "cy",
          y(mark.volts()),
          "r",
          2.6,
          "fill",
          palette.of(ink(mark)));
    }
    legend();
    svg.close();
    return svg.toString();
  }

  private void axes() {
    double voltStep = step(highVolts - lowVolts);
    for (double volts = lowVolts; volts <= highVolts + voltStep / 2; volts += voltStep) {
      path(flat(volts), Ink.RULE, 1, "");
      text(number(volts) + " V", LEFT_PIXELS - 6, y(volts) + 4, "end", Ink.QUIET);
    }
    double hourStep = step(mostHours);
    for (double hours = 0; hours <= mostHours + 1e-9; hours += hourStep) {
      path(
          "M" + Svg.number(x(hours)) + "," + Svg.number(TOP_PIXELS) + "v" + Svg.number(PLOT_PIXELS),
          Ink.RULE,
          1,
          "");
      text(number(hours), x(hours), TOP_PIXELS + PLOT_PIXELS + 15, "middle", Ink.QUIET);
    }
    text(
        "hours since the mains failed",
        options.widthPixels() - RIGHT_PIXELS,
        TOP_PIXELS + PLOT_PIXELS + 32,
        "end",
        Ink.QUIET);
  }

  private void legend() {
    double y = TOP_PIXELS + PLOT_PIXELS + AXIS_PIXELS + 12;
    double middle = LEFT_PIXELS - 20;
    y = sample(y, middle, Ink.TEXT, 2, "", "voltage of the battery");
    y =
        sample(
            y,
            middle,
            Ink.ERROR,
            1.2,
            "7 3 1.5 3",
            "switched off at " + number(profile.cutOffVolts()) + " V");
    if (profile.wantedHours() > 0) {
      y =
          sample(
              y,
              middle,
              Ink.PLANT,
              1.4,
              "2 3",
              "wanted to last " + number(profile.wantedHours()) + " h");
    }
    for (int index = 0; index < profile.marks().size(); index++) {
      DischargeProfile.Mark mark = profile.marks().get(index);
      badge(middle, y - 4, index, mark);
      text(
          Lettering.fit(mark.what(), 11, false, options.widthPixels() - LEFT_PIXELS - RIGHT_PIXELS),
          LEFT_PIXELS,
          y,
          "start",
          Ink.TEXT);
      y += ROW_PIXELS;
    }
  }

  private double sample(
      double y, double middle, Ink ink, double width, String dashes, String words) {
    path("M" + Svg.number(middle - 15) + "," + Svg.number(y - 4) + "h30", ink, width, dashes);
    text(words, LEFT_PIXELS, y, "start", Ink.QUIET);
    return y + ROW_PIXELS;
  }

  private void badge(double x, double y, int index, DischargeProfile.Mark mark) {
    svg.element(
        "circle",
        "cx",
        x,
        "cy",
        y,
        "r",
        MARK_PIXELS,
        "fill",
        palette.of(Ink.PAPER),
        "stroke",
        palette.of(ink(mark)),
        "stroke-width",
        mark.isEarly() ? 2.4 : 1.2);
    svg.label(Integer.toString(index + 1), x, y + 3.5, 10, true, "middle", palette.of(ink(mark)));
  }

  private static Ink ink(DischargeProfile.Mark mark) {
    return mark.isEarly() ? Ink.ERROR : Ink.TEXT;
  }

  private String curve(List<DischargeProfile.Point> points) {
    StringBuilder path = new StringBuilder();
    for (DischargeProfile.Point point : points) {
      path.append(path.isEmpty() ? "M" : "L")
          .append(Svg.number(x(point.hours())))
          .append(',')
          .append(Svg.number(y(point.volts())));
    }
    return path.toString();
  }

  private String flat(double volts) {
    return "M"
        + Svg.number(LEFT_PIXELS)
        + ","
        + Svg.number(y(volts))
        + "H"
        + Svg.number(options.widthPixels() - RIGHT_PIXELS);
  }

  private String upright() {
    return "M"
        + Svg.number(x(profile.wantedHours()))
        + ","
        + Svg.number(TOP_PIXELS)
        + "v"
        + Svg.number(PLOT_PIXELS);
  }

  private void path(String path, Ink ink, double width, String dashes) {
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

  private void text(String words, double x, double y, String anchor, Ink ink) {
    svg.label(words, x, y, 11, false, anchor, palette.of(ink));
  }

  private double x(double hours) {
    return LEFT_PIXELS + hours / mostHours * (options.widthPixels() - LEFT_PIXELS - RIGHT_PIXELS);
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

  private static String number(double value) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }
}
