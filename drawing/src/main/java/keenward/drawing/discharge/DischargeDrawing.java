package keenward.drawing.discharge;

import java.util.List;
import keenward.drawing.graph.VoltageGraph;
import keenward.drawing.load.LoadOptions;
import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Lettering;
import keenward.drawing.svg.Svg;

/**
 * Draws the voltage of a battery over the hours of a mains failure. What happens is numbered on the
 * curve and told below it.
 */
public final class DischargeDrawing {
  private static final double LEFT_PIXELS = 50;
  private static final double RIGHT_PIXELS = 18;
  private static final VoltageGraph.Frame FRAME =
      new VoltageGraph.Frame(LEFT_PIXELS, RIGHT_PIXELS, 26, 200, 42);
  private static final double ROW_PIXELS = 18;
  private static final double MARK_PIXELS = 8;

  private final DischargeProfile profile;
  private final LoadOptions options;
  private final VoltageGraph graph;

  private DischargeDrawing(DischargeProfile profile, LoadOptions options) {
    this.profile = profile;
    this.options = options;
    double mostHours =
        Math.max(
            Math.max(profile.wantedHours(), 0.1),
            profile.points().stream().mapToDouble(DischargeProfile.Point::hours).max().orElse(1));
    double least =
        profile.points().stream().mapToDouble(DischargeProfile.Point::volts).min().orElse(0);
    double most =
        profile.points().stream().mapToDouble(DischargeProfile.Point::volts).max().orElse(1);
    graph =
        new VoltageGraph(
            options,
            FRAME,
            mostHours,
            Math.floor(Math.min(least, profile.cutOffVolts()) - 0.25),
            Math.ceil(Math.max(most, profile.cutOffVolts())));
  }

  /** The drawing of one supply; of its options the width, colours and prefix of ids count. */
  public static String svg(DischargeProfile profile, LoadOptions options) {
    return new DischargeDrawing(profile, options).paint();
  }

  private String paint() {
    int rows = profile.marks().size() + 2 + (profile.wantedHours() > 0 ? 1 : 0);
    graph.open(
        "discharge-drawing",
        "discharge " + profile.supply(),
        "Battery of " + profile.supply() + " in a mains failure",
        String.join("; ", profile.marks().stream().map(DischargeProfile.Mark::what).toList()),
        rows * ROW_PIXELS + 8);
    graph.axes("hours since the mains failed");
    graph.dashed(graph.flat(profile.cutOffVolts()), Ink.ERROR, 1.2, "7 3 1.5 3");
    if (profile.wantedHours() > 0) {
      graph.dashed(graph.upright(profile.wantedHours()), Ink.PLANT, 1.4, "2 3");
    }
    graph.line(curve(profile.points()), Ink.TEXT, 2);
    for (int index = 0; index < profile.marks().size(); index++) {
      DischargeProfile.Mark mark = profile.marks().get(index);
      // Neighbours go up and down in turn, so that their numbers do not cover each other.
      double lift = MARK_PIXELS + 5 + index % 3 * 2 * MARK_PIXELS;
      badge(
          graph.x(mark.hours()),
          Math.max(MARK_PIXELS + 1, graph.y(mark.volts()) - lift),
          index,
          mark);
      graph
          .svg()
          .element(
              "circle",
              "cx",
              graph.x(mark.hours()),
              "cy",
              graph.y(mark.volts()),
              "r",
              2.6,
              "fill",
              graph.palette().of(ink(mark)));
    }
    legend();
    return graph.close();
  }

  private void legend() {
    double y = graph.below() + 12;
    double middle = LEFT_PIXELS - 20;
    y = sample(y, middle, Ink.TEXT, 2, "", "voltage of the battery");
    y =
        sample(
            y,
            middle,
            Ink.ERROR,
            1.2,
            "7 3 1.5 3",
            "switched off at " + VoltageGraph.number(profile.cutOffVolts()) + " V");
    if (profile.wantedHours() > 0) {
      y =
          sample(
              y,
              middle,
              Ink.PLANT,
              1.4,
              "2 3",
              "wanted to last " + VoltageGraph.number(profile.wantedHours()) + " h");
    }
    for (int index = 0; index < profile.marks().size(); index++) {
      DischargeProfile.Mark mark = profile.marks().get(index);
      badge(middle, y - 4, index, mark);
      graph.text(
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
    graph.dashed(
        "M" + Svg.number(middle - 15) + "," + Svg.number(y - 4) + "h30", ink, width, dashes);
    graph.text(words, LEFT_PIXELS, y, "start", Ink.QUIET);
    return y + ROW_PIXELS;
  }

  private void badge(double x, double y, int index, DischargeProfile.Mark mark) {
    graph
        .svg()
        .element(
            "circle",
            "cx",
            x,
            "cy",
            y,
            "r",
            MARK_PIXELS,
            "fill",
            graph.palette().of(Ink.PAPER),
            "stroke",
            graph.palette().of(ink(mark)),
            "stroke-width",
            mark.isEarly() ? 2.4 : 1.2);
    graph
        .svg()
        .label(
            Integer.toString(index + 1),
            x,
            y + 3.5,
            10,
            true,
            "middle",
            graph.palette().of(ink(mark)));
  }

  private static Ink ink(DischargeProfile.Mark mark) {
    return mark.isEarly() ? Ink.ERROR : Ink.TEXT;
  }

  private String curve(List<DischargeProfile.Point> points) {
    StringBuilder path = new StringBuilder();
    for (DischargeProfile.Point point : points) {
      path.append(path.isEmpty() ? "M" : "L")
          .append(Svg.number(graph.x(point.hours())))
          .append(',')
          .append(Svg.number(graph.y(point.volts())));
    }
    return path.toString();
  }
}
