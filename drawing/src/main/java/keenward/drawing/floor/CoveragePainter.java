package keenward.drawing.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import keenward.core.building.coverage.BeamLine;
import keenward.core.building.coverage.CoverageMap;
import keenward.core.building.coverage.DetectorView;
import keenward.core.building.coverage.Gap;
import keenward.core.building.coverage.RoomCoverage;
import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Palette;
import keenward.drawing.svg.Svg;

/**
 * Tints what detectors see and hatches where nobody looks. The hatching is made of lines, not of a
 * pattern, so that every reader of SVG and every printer shows it.
 */
final class CoveragePainter {

  private static final double HATCH_PIXELS = 7;
  private static final String HEARD_DASHES = "1.5 4";
  private static final String BEAM_DASHES = "9 3";

  private final Svg svg;
  private final Palette palette;
  private final Frame frame;

  CoveragePainter(Svg svg, Palette palette, Frame frame) {
    this.svg = svg;
    this.palette = palette;
    this.frame = frame;
  }

  static List<DetectorView> views(CoverageMap map, String floor) {
    return map.views().stream().filter(view -> view.floor().equals(floor)).toList();
  }

  static List<DetectorView> hearings(CoverageMap map, String floor) {
    return map.detectors().hearings().stream()
        .filter(heard -> heard.floor().equals(floor))
        .toList();
  }

  static List<BeamLine> beams(CoverageMap map, String floor) {
    return map.detectors().beams().stream().filter(beam -> beam.floor().equals(floor)).toList();
  }

  /** The gaps of rooms that something watches; in others everything is one. */
  static List<Gap> gaps(CoverageMap map, String floor) {
    return map.findFloor(floor).stream()
        .flatMap(each -> each.rooms().stream())
        .filter(RoomCoverage::isWatched)
        .flatMap(room -> room.gaps().stream())
        .toList();
  }

  void paint(CoverageMap map, String floor) {
    svg.open("g", "class", "coverage");
    for (DetectorView view : views(map, floor)) {
      svg.open("g", "class", "seen");
      svg.text("title", "seen by " + view.device().name());
      svg.element(
          "path",
          "d",
          rings(view),
          "fill",
          palette.of(Ink.SEEN),
          "fill-opacity",
          0.16,
          "stroke",
          palette.of(Ink.SEEN),
          "stroke-opacity",
          0.7,
          "stroke-width",
          0.8);
      svg.close();
    }
    for (DetectorView heard : hearings(map, floor)) {
      svg.open("g", "class", "heard");
      svg.text("title", "heard by " + heard.device().name());
      svg.element(
          "path",
          "d",
          rings(heard),
          "fill",
          "none",
          "stroke",
          palette.of(Ink.SEEN),
          "stroke-width",
          1.4,
          "stroke-dasharray",
          HEARD_DASHES);
      svg.close();
    }
    for (BeamLine beam : beams(map, floor)) {
      svg.open("g", "class", "beam");
      svg.text(
          "title",
          "beam " + beam.device().name() + (beam.isClear() ? "" : ", something in its way"));
      line(svg, palette, frame.at(beam.from()), frame.at(beam.to()), beam.isClear());
      svg.close();
    }
    for (Gap gap : gaps(map, floor)) {
      List<List<Spot>> rings = gap.rings().stream().map(frame::at).toList();
      svg.open("g", "class", "unseen");
      svg.text("title", title(gap));
      hatch(svg, palette, rings);
      svg.close();
    }
    svg.close();
  }

  private static String title(Gap gap) {
    return "unseen, "
        + Svg.number(Math.round(gap.squareMetres() * 10) / 10.0)
        + " m2"
        + (gap.canBeCrossed() ? ", between " + String.join(" and ", gap.reaches()) : "");
  }

  private String rings(DetectorView view) {
    return view.seen().outlines(CoverageMap.ARC_ERROR_METRES).stream()
        .map(ring ->
            ring.stream()
                .map(frame::at)
                .map(Spot::toString)
                .collect(Collectors.joining("L", "M", "Z")))
        .collect(Collectors.joining());
  }

  private static void line(Svg svg, Palette palette, Spot from, Spot to, boolean isClear) {
    svg.element(
        "path",
        "d",
        "M" + from + "L" + to,
        "fill",
        "none",
        "stroke",
        palette.of(isClear ? Ink.SEEN : Ink.ERROR),
        "stroke-width",
        2.0,
        "stroke-dasharray",
        BEAM_DASHES);
  }

  static void beamSample(Svg svg, Palette palette, Spot at) {
    line(svg, palette, at.plus(-10, 0), at.plus(10, 0), true);
  }

  static void heardSample(Svg svg, Palette palette, Spot at) {
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
        "rx",
        6.0,
        "fill",
        "none",
        "stroke",
        palette.of(Ink.SEEN),
        "stroke-width",
        1.4,
        "stroke-dasharray",
        HEARD_DASHES);
  }

  static void seenSample(Svg svg, Palette palette, Spot at) {
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
        palette.of(Ink.SEEN),
        "fill-opacity",
        0.16,
        "stroke",
        palette.of(Ink.SEEN),
        "stroke-opacity",
        0.7,
        "stroke-width",
        0.8);
  }

  static void unseenSample(Svg svg, Palette palette, Spot at) {
    hatch(
        svg,
        palette,
        List.of(
            List.of(
                new Spot(at.x() - 10, at.y() - 6),
                new Spot(at.x() + 10, at.y() - 6),
                new Spot(at.x() + 10, at.y() + 6),
                new Spot(at.x() - 10, at.y() + 6))));
  }

  private static void hatch(Svg svg, Palette palette, List<List<Spot>> rings) {
    svg.element(
        "path",
        "d",
        rings.stream()
                .map(ring ->
                    ring.stream().map(Spot::toString).collect(Collectors.joining("L", "M", "Z")))
                .collect(Collectors.joining())
            + lines(rings),
        "fill",
        "none",
        "stroke",
        palette.of(Ink.UNSEEN),
        "stroke-width",
        0.8);
  }

  /** Slanted lines inside rings: on each line, in and out take turns at the edges it meets. */
  private static String lines(List<List<Spot>> rings) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (List<Spot> ring : rings) {
      for (Spot corner : ring) {
        least = Math.min(least, corner.x() + corner.y());
        most = Math.max(most, corner.x() + corner.y());
      }
    }
    StringBuilder path = new StringBuilder();
    // The offset keeps lines off corners, which lie on whole values more often than not.
    for (double sum = Math.ceil(least / HATCH_PIXELS) * HATCH_PIXELS + 0.013;
        sum < most;
        sum += HATCH_PIXELS) {
      List<Double> crossings = crossings(rings, sum);
      for (int i = 0; i + 1 < crossings.size(); i += 2) {
        double from = crossings.get(i);
        double to = crossings.get(i + 1);
        path.append('M').append(new Spot(from, sum - from));
        path.append('L').append(new Spot(to, sum - to));
      }
    }
    return path.toString();
  }

  private static List<Double> crossings(List<List<Spot>> rings, double sum) {
    List<Double> crossings = new ArrayList<>();
    for (List<Spot> ring : rings) {
      Spot last = ring.getLast();
      for (Spot corner : ring) {
        double before = last.x() + last.y() - sum;
        double after = corner.x() + corner.y() - sum;
        if (before < 0 != after < 0) {
          crossings.add(last.x() + (corner.x() - last.x()) * before / (before - after));
        }
        last = corner;
      }
    }
    crossings.sort(null);
    return crossings;
  }
}
