package keenward.drawing.voltage;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import keenward.drawing.graph.VoltageGraph;
import keenward.drawing.load.LoadOptions;
import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Lettering;
import keenward.drawing.svg.Svg;

/**
 * Draws the voltages of a supply's cables over the length of cable from it: one line style a state,
 * each device as a dot on the last state's line, and its least voltage as a bar under or over it.
 */
public final class VoltageDrawing {
  private static final double LEFT_PIXELS = 46;
  private static final VoltageGraph.Frame FRAME =
      new VoltageGraph.Frame(LEFT_PIXELS, 16, 14, 210, 40);
  private static final double ROW_PIXELS = 18;
  private static final double BAR_PIXELS = 9;
  private static final List<String> DASHES = List.of("1.5 3", "6 3", "");

  private final VoltageProfile profile;
  private final LoadOptions options;
  private final VoltageGraph graph;

  private VoltageDrawing(VoltageProfile profile, LoadOptions options) {
    this.profile = profile;
    this.options = options;
    List<VoltageProfile.Place> places =
        profile.stretches().stream().flatMap(each -> Stream.of(each.near(), each.far())).toList();
    double mostMetres =
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
    double lowVolts = Math.floor(DoubleStream.of(volts).min().orElse(0));
    double highVolts = Math.max(lowVolts + 1, Math.ceil(DoubleStream.of(volts).max().orElse(1)));
    graph = new VoltageGraph(options, FRAME, mostMetres, lowVolts, highVolts);
  }

  /** The drawing of one supply; of its options the width, colours and prefix of ids count. */
  public static String svg(VoltageProfile profile, LoadOptions options) {
    return new VoltageDrawing(profile, options).paint();
  }

  private String paint() {
    List<String> legend = new ArrayList<>(profile.states());
    legend.add("least voltage that a device needs");
    graph.open(
        "voltage-drawing",
        "volts " + profile.supply(),
        "Voltage along the cables of " + profile.supply(),
        described(),
        legend.size() * ROW_PIXELS + 6);
    graph.axes("metres of cable from " + profile.supply());
    for (VoltageProfile.Stretch stretch : profile.stretches()) {
      for (int state = 0; state < profile.states().size(); state++) {
        line(stretch, state);
      }
    }
    profile.devices().forEach(this::device);
    legend(legend);
    return graph.close();
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

  private void line(VoltageProfile.Stretch stretch, int state) {
    Optional<Double> near = stretch.near().volts().get(state);
    Optional<Double> far = stretch.far().volts().get(state);
    if (near.isPresent() && far.isPresent()) {
      stroke(
          graph.x(stretch.near().metres()),
          graph.y(near.get()),
          graph.x(stretch.far().metres()),
          graph.y(far.get()),
          state);
    }
  }

  private void stroke(double x1, double y1, double x2, double y2, int state) {
    boolean isLast = state == profile.states().size() - 1;
    graph.dashed(
        "M" + Svg.number(x1) + "," + Svg.number(y1) + "L" + Svg.number(x2) + "," + Svg.number(y2),
        isLast ? Ink.TEXT : Ink.INTRUSION,
        isLast ? 2.0 : 1.4,
        DASHES.get(Math.min(state, DASHES.size() - 1)));
  }

  private void device(VoltageProfile.Device device) {
    int last = profile.states().size() - 1;
    double x = graph.x(device.place().metres());
    Optional<Double> volts = device.place().volts().get(last);
    boolean isLow =
        device.leastVolts().filter(least -> volts.isEmpty() || volts.get() < least).isPresent();
    device.leastVolts().ifPresent(least -> bar(x, graph.y(least), isLow));
    volts.ifPresent(found ->
        graph
            .svg()
            .element(
                "circle",
                "cx",
                x,
                "cy",
                graph.y(found),
                "r",
                3.4,
                "fill",
                graph.palette().of(isLow ? Ink.ERROR : Ink.TEXT)));
    if (isLow) {
      boolean isRight = x > options.widthPixels() / 2;
      graph
          .svg()
          .label(
              Lettering.fit(device.name(), 11, true, options.widthPixels() / 2 - LEFT_PIXELS),
              x + (isRight ? -7 : 7),
              device.leastVolts().map(graph::y).orElseThrow() - 6,
              11,
              true,
              isRight ? "end" : "start",
              graph.palette().of(Ink.ERROR));
    }
  }

  private void bar(double x, double y, boolean isLow) {
    graph.line(
        "M"
            + Svg.number(x - BAR_PIXELS / 2)
            + ","
            + Svg.number(y)
            + "H"
            + Svg.number(x + BAR_PIXELS / 2),
        isLow ? Ink.ERROR : Ink.PLANT,
        2.4);
  }

  private void legend(List<String> words) {
    double y = graph.below() + 10;
    for (int row = 0; row < words.size(); row++) {
      if (row < profile.states().size()) {
        stroke(LEFT_PIXELS, y - 4, LEFT_PIXELS + 30, y - 4, row);
      } else {
        bar(LEFT_PIXELS + 15, y - 4, false);
      }
      graph.text(words.get(row), LEFT_PIXELS + 40, y, "start", Ink.QUIET);
      y += ROW_PIXELS;
    }
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
