package keenward.drawing.load;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import keenward.drawing.svg.Identifiers;
import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Lettering;
import keenward.drawing.svg.Palette;
import keenward.drawing.svg.Svg;

/**
 * Draws for each supply the load at rest and in alarm against what it may give, and the battery
 * needed against the one fitted. Loads of all supplies share one scale, batteries another.
 */
public final class LoadDrawing {

  private static final double BASELINE = 0.36;
  private static final double MARGIN_PIXELS = 16;
  private static final double NAME_PIXELS = 60;
  private static final double VALUE_PIXELS = 108;
  private static final double BAR_PIXELS = 13;
  private static final double ROW_PIXELS = 22;
  private static final double HEADING_PIXELS = 30;
  private static final double SPACE_PIXELS = 12;

  private final List<SupplyLoad> loads;
  private final LoadOptions options;
  private final Palette palette;
  private final Svg svg = new Svg();
  private double y = MARGIN_PIXELS;

  private LoadDrawing(List<SupplyLoad> loads, LoadOptions options) {
    this.loads = loads;
    this.options = options;
    palette = options.palette();
  }

  /** The drawing of these supplies. */
  public static String svg(List<SupplyLoad> loads, LoadOptions options) {
    return new LoadDrawing(loads, options).paint();
  }

  private String paint() {
    double height =
        2 * MARGIN_PIXELS
            + loads.size() * (HEADING_PIXELS + 4 * ROW_PIXELS + 2 * SPACE_PIXELS)
            - SPACE_PIXELS;
    Identifiers ids = new Identifiers(options.idPrefix());
    String titleId = ids.of("title", "loads");
    String describedId = ids.of("described", "loads");
    svg.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "class",
        "load-drawing",
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
    svg.text("title", "Loads and batteries", "id", titleId);
    svg.text(
        "desc",
        loads.stream().map(this::described).collect(Collectors.joining(" ")),
        "id",
        describedId);
    svg.element(
        "rect", "width", options.widthPixels(), "height", height, "fill", palette.of(Ink.PAPER));
    double mostMilliamps =
        most(
            loads.stream()
                .flatMapToDouble(load ->
                    DoubleStream.of(
                        load.standbyMilliamps(),
                        load.alarmMilliamps(),
                        load.ratingMilliamps().orElse(0.0))));
    double mostAmpereHours =
        most(
            loads.stream()
                .flatMapToDouble(load ->
                    DoubleStream.of(
                        load.neededAmpereHours().orElse(0.0),
                        load.fittedAmpereHours().orElse(0.0))));
    for (SupplyLoad load : loads) {
      supply(load, mostMilliamps, mostAmpereHours);
    }
    svg.close();
    return svg.toString();
  }

  private static double most(DoubleStream values) {
    return Math.max(values.max().orElse(0), 1e-9);
  }

  private String described(SupplyLoad load) {
    String atLeast = load.atLeast() ? "at least " : "";
    return load.supply()
        + ": standby "
        + atLeast
        + milliamps(load.standbyMilliamps())
        + ", alarm "
        + atLeast
        + milliamps(load.alarmMilliamps())
        + ", battery needed "
        + load.neededAmpereHours().map(hours -> atLeast + ampereHours(hours)).orElse("not assessed")
        + ", fitted "
        + load.fittedAmpereHours().map(LoadDrawing::ampereHours).orElse("not stated")
        + ".";
  }

  private void supply(SupplyLoad load, double mostMilliamps, double mostAmpereHours) {
    double room = options.widthPixels() - 2 * MARGIN_PIXELS;
    text(
        Lettering.fit(load.supply(), 13, true, room),
        MARGIN_PIXELS,
        y + 12,
        13,
        true,
        Ink.TEXT,
        "start");
    y += HEADING_PIXELS;
    String atLeast = load.atLeast() ? "≥ " : "";
    double barsTop = y;
    bar(
        "standby",
        load.standbyMilliamps() / mostMilliamps,
        atLeast + milliamps(load.standbyMilliamps()),
        Ink.INTRUSION,
        false);
    bar(
        "alarm",
        load.alarmMilliamps() / mostMilliamps,
        atLeast + milliamps(load.alarmMilliamps()),
        Ink.GAS,
        false);
    load.ratingMilliamps()
        .ifPresent(rating -> limit(rating / mostMilliamps, barsTop, milliamps(rating)));
    y += SPACE_PIXELS;
    load.neededAmpereHours()
        .ifPresentOrElse(
            needed ->
                bar(
                    "needed",
                    needed / mostAmpereHours,
                    atLeast + ampereHours(needed),
                    Ink.TEXT,
                    true),
            () -> missing("needed", "not assessed"));
    load.fittedAmpereHours()
        .ifPresentOrElse(
            fitted -> {
              boolean small = load.enough().filter(enough -> !enough).isPresent();
              bar(
                  "fitted",
                  fitted / mostAmpereHours,
                  ampereHours(fitted) + (small ? ", too small" : ""),
                  small ? Ink.ERROR : Ink.PLANT,
                  false);
            },
            () -> missing("fitted", "not stated"));
    y += SPACE_PIXELS;
  }

  private double barRoom() {
    return options.widthPixels() - 2 * MARGIN_PIXELS - NAME_PIXELS - VALUE_PIXELS;
  }

  /** A bar; an outlined one is a need, a filled one is there. */
  private void bar(String name, double share, String value, Ink ink, boolean outlined) {
    double left = MARGIN_PIXELS + NAME_PIXELS;
    double width = Math.max(1, share * barRoom());
    svg.element(
        "rect",
        "x",
        left,
        "y",
        y,
        "width",
        width,
        "height",
        BAR_PIXELS,
        "rx",
        2.0,
        "fill",
        palette.of(outlined ? Ink.PAPER : ink),
        "stroke",
        palette.of(ink),
        "stroke-width",
        1.2);
    double middle = y + BAR_PIXELS / 2;
    text(name, MARGIN_PIXELS, middle + 11 * BASELINE, 11, false, Ink.QUIET, "start");
    text(
        value,
        options.widthPixels() - MARGIN_PIXELS,
        middle + 11 * BASELINE,
        11,
        true,
        Ink.TEXT,
        "end");
    y += ROW_PIXELS;
  }

  private void missing(String name, String what) {
    double middle = y + BAR_PIXELS / 2;
    text(name, MARGIN_PIXELS, middle + 11 * BASELINE, 11, false, Ink.QUIET, "start");
    text(what, MARGIN_PIXELS + NAME_PIXELS, middle + 11 * BASELINE, 11, false, Ink.QUIET, "start");
    y += ROW_PIXELS;
  }

  /** What the supply may give, as a broken line across the bars. */
  private void limit(double share, double top, String value) {
    double x = MARGIN_PIXELS + NAME_PIXELS + share * barRoom();
    svg.element(
        "path",
        "d",
        "M" + Svg.number(x) + "," + Svg.number(top - 5) + "V" + Svg.number(y - 4),
        "stroke",
        palette.of(Ink.TEXT),
        "stroke-width",
        1.2,
        "stroke-dasharray",
        "4 2.5");
    text("rated " + value, x, top - 9, 10, false, Ink.QUIET, "middle");
  }

  private static String milliamps(double value) {
    return rounded(value, 0) + " mA";
  }

  private static String ampereHours(double value) {
    return rounded(value, 2) + " Ah";
  }

  private static String rounded(double value, int places) {
    BigDecimal rounded =
        BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP).stripTrailingZeros();
    return rounded.signum() == 0 ? "0" : rounded.toPlainString();
  }

  private void text(
      String text, double x, double y, double size, boolean bold, Ink ink, String anchor) {
    svg.label(text, x, y, size, bold, anchor, palette.of(ink));
  }
}
