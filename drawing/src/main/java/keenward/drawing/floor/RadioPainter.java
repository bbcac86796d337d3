package keenward.drawing.floor;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import keenward.core.plan.Point;
import keenward.core.radio.Grid;
import keenward.core.radio.RadioMap;
import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Palette;
import keenward.drawing.svg.Svg;

/**
 * Tints how well a floor is heard. The better is darker in one colour, the worse hatched and then
 * cross-hatched, so that a print without colour tells them apart.
 */
final class RadioPainter {

  private static final double AMPLE_DECIBELS = 10;
  private static final double HATCH_PIXELS = 6;

  /** How well a place is heard. */
  enum Band {
    AMPLE(0.34),
    ENOUGH(0.14),
    WEAK(0),
    NOTHING(0);

    private final double opacity;

    Band(double opacity) {
      this.opacity = opacity;
    }

    static Band of(double marginDecibels, double reserveDecibels) {
      if (marginDecibels < 0) {
        return NOTHING;
      }
      if (marginDecibels < reserveDecibels) {
        return WEAK;
      }
      return marginDecibels < reserveDecibels + AMPLE_DECIBELS ? ENOUGH : AMPLE;
    }

    String caption(double reserveDecibels) {
      long reserve = Math.round(reserveDecibels);
      long ample = Math.round(reserveDecibels + AMPLE_DECIBELS);
      return switch (this) {
        case AMPLE -> "radio: " + ample + " dB in hand or more";
        case ENOUGH -> "radio: " + reserve + " to " + ample + " dB, holds in 99 % of places";
        case WEAK -> "radio: 0 to " + reserve + " dB, may fail";
        case NOTHING -> "radio: not heard";
      };
    }
  }

  private final Svg svg;
  private final Palette palette;
  private final Frame frame;

  RadioPainter(Svg svg, Palette palette, Frame frame) {
    this.svg = svg;
    this.palette = palette;
    this.frame = frame;
  }

  static Set<Band> bands(RadioMap map) {
    Set<Band> bands = EnumSet.noneOf(Band.class);
    for (int i = 0; i < map.grid().size(); i++) {
      OptionalDouble margin = map.marginDecibels(i);
      if (margin.isPresent()) {
        bands.add(Band.of(margin.getAsDouble(), map.reserveDecibels()));
      }
    }
    return bands;
  }

  void paint(RadioMap map) {
    svg.open("g", "class", "radio");
    blocks(map)
        .forEach((band, blocks) -> {
          svg.open("g", "class", "radio-" + band.name().toLowerCase(Locale.ROOT));
          svg.text("title", band.caption(map.reserveDecibels()));
          fill(svg, palette, band, blocks);
          svg.close();
        });
    svg.close();
  }

  /** Rectangles of one band: runs along rows, joined with the run above where that is alike. */
  private Map<Band, List<List<Spot>>> blocks(RadioMap map) {
    Map<Band, List<List<Spot>>> blocks = new LinkedHashMap<>();
    Map<Run, Integer> open = new HashMap<>();
    Grid grid = map.grid();
    for (int row = 0; row <= grid.rows(); row++) {
      Map<Run, Integer> next = new HashMap<>();
      for (Run run : row < grid.rows() ? runs(map, row) : List.<Run>of()) {
        Integer since = open.remove(run);
        next.put(run, since == null ? row : since);
      }
      int end = row;
      open.entrySet().stream()
          .sorted(Map.Entry.comparingByKey())
          .forEach(each ->
              blocks
                  .computeIfAbsent(each.getKey().band(), ignored -> new ArrayList<>())
                  .add(corners(grid, each.getKey(), each.getValue(), end)));
      open = next;
    }
    return blocks;
  }

  private record Run(Band band, int first, int end) implements Comparable<Run> {
    @Override
    public int compareTo(Run other) {
      return Integer.compare(first, other.first);
    }
  }

  private static List<Run> runs(RadioMap map, int row) {
    List<Run> runs = new ArrayList<>();
    int columns = map.grid().columns();
    int column = 0;
    while (column < columns) {
      OptionalDouble margin = map.marginDecibels(row * columns + column);
      int first = column;
      column++;
      if (margin.isEmpty()) {
        continue;
      }
      Band band = Band.of(margin.getAsDouble(), map.reserveDecibels());
      while (column < columns) {
        OptionalDouble next = map.marginDecibels(row * columns + column);
        if (next.isEmpty() || Band.of(next.getAsDouble(), map.reserveDecibels()) != band) {
          break;
        }
        column++;
      }
      runs.add(new Run(band, first, column));
    }
    return runs;
  }

  private List<Spot> corners(Grid grid, Run run, int fromRow, int toRow) {
    double left = grid.leftMetres() + (run.first() - 0.5) * grid.stepMetres();
    double right = grid.leftMetres() + (run.end() - 0.5) * grid.stepMetres();
    double low = grid.bottomMetres() + (fromRow - 0.5) * grid.stepMetres();
    double high = grid.bottomMetres() + (toRow - 0.5) * grid.stepMetres();
    return frame.at(
        List.of(
            new Point(left, low),
            new Point(right, low),
            new Point(right, high),
            new Point(left, high)));
  }

  static void sample(Svg svg, Palette palette, Band band, Spot at) {
    fill(
        svg,
        palette,
        band,
        List.of(List.of(at.plus(-10, -6), at.plus(10, -6), at.plus(10, 6), at.plus(-10, 6))));
    svg.element(
        "rect",
        "x",
        at.x() - 10,
        "y",
        at.y() - 6,
        "width",
        20.0,
        "height",
        12.0,
        "fill",
        "none",
        "stroke",
        palette.of(Ink.QUIET),
        "stroke-width",
        0.6);
  }

  private static void fill(Svg svg, Palette palette, Band band, List<List<Spot>> blocks) {
    switch (band) {
      case AMPLE, ENOUGH ->
          svg.element(
              "path",
              "d",
              blocks.stream()
                  .map(ring ->
                      ring.stream().map(Spot::toString).collect(Collectors.joining("L", "M", "Z")))
                  .collect(Collectors.joining()),
              "fill",
              palette.of(Ink.SEEN),
              "fill-opacity",
              band.opacity,
              "shape-rendering",
              "crispEdges");
      case WEAK -> lines(svg, palette.of(Ink.WARNING), slants(blocks, 1));
      case NOTHING -> lines(svg, palette.of(Ink.ERROR), slants(blocks, 1) + slants(blocks, -1));
    }
  }

  private static void lines(Svg svg, String colour, String path) {
    svg.element("path", "d", path, "fill", "none", "stroke", colour, "stroke-width", 0.8);
  }

  /** Slanted lines inside upright rectangles; they run on from one to the next. */
  private static String slants(List<List<Spot>> blocks, int slope) {
    StringBuilder path = new StringBuilder();
    for (List<Spot> block : blocks) {
      double left = block.stream().mapToDouble(Spot::x).min().orElseThrow();
      double right = block.stream().mapToDouble(Spot::x).max().orElseThrow();
      double top = block.stream().mapToDouble(Spot::y).min().orElseThrow();
      double bottom = block.stream().mapToDouble(Spot::y).max().orElseThrow();
      double least = Math.min(left + slope * top, left + slope * bottom);
      double most = Math.max(right + slope * top, right + slope * bottom);
      for (double sum = Math.ceil(least / HATCH_PIXELS) * HATCH_PIXELS;
          sum < most;
          sum += HATCH_PIXELS) {
        double one = sum - slope * top;
        double other = sum - slope * bottom;
        double from = Math.max(left, Math.min(one, other));
        double to = Math.min(right, Math.max(one, other));
        if (from < to) {
          path.append('M').append(new Spot(from, slope * (sum - from)));
          path.append('L').append(new Spot(to, slope * (sum - to)));
        }
      }
    }
    return path.toString();
  }
}
