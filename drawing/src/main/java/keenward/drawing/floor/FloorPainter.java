package keenward.drawing.floor;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import keenward.core.building.FloorGeometry;
import keenward.core.building.RoomGeometry;
import keenward.core.building.walking.SiteWalk;
import keenward.core.plan.DrawingUnit;
import keenward.core.plan.Furniture;
import keenward.core.plan.RoomUse;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.rules.Severity;
import keenward.drawing.svg.Identifiers;
import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Lettering;
import keenward.drawing.svg.Palette;
import keenward.drawing.svg.Svg;

/** Writes a floor's layout as SVG. */
final class FloorPainter {

  /** Baseline below the middle of capital letters, in font sizes. */
  private static final double BASELINE = 0.36;

  private static final double METRES_A_FOOT = 0.3048;

  private final SitePlan plan;
  private final FloorGeometry floor;
  private final FloorLayout layout;
  private final Legend legend;
  private final FloorOptions options;
  private final Palette palette;
  private final Svg svg = new Svg();
  private final Identifiers ids;
  private final SymbolPainter symbols;

  FloorPainter(
      SitePlan plan, FloorGeometry floor, FloorLayout layout, Legend legend, FloorOptions options) {
    this.plan = plan;
    this.floor = floor;
    this.layout = layout;
    this.legend = legend;
    this.options = options;
    palette = options.palette();
    ids = new Identifiers(options.idPrefix());
    symbols = new SymbolPainter(svg, palette);
  }

  String paint() {
    // Whole pixels: a PDF renderer reads no other size.
    double width =
        Math.floor(
            layout.legendBeside()
                ? layout.area().right() + FloorLayout.LEGEND_PIXELS + 2 * FloorLayout.MARGIN_PIXELS
                : options.widthPixels());
    double height =
        Math.ceil(
            Math.max(legend.bottom(), layout.area().bottom() + 34) + FloorLayout.MARGIN_PIXELS);
    String titleId = ids.of("title", floor.name());
    String describedId = ids.of("described", floor.name());
    svg.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "class",
        "floor-drawing",
        "role",
        "img",
        "aria-labelledby",
        titleId + " " + describedId,
        "viewBox",
        "0 0 " + Svg.number(width) + " " + Svg.number(height),
        "width",
        width,
        "height",
        height,
        "font-family",
        options.faces());
    svg.text("title", floor.name() + ", " + plan.site().name(), "id", titleId);
    svg.text("desc", description(), "id", describedId);
    svg.element("rect", "width", width, "height", height, "fill", palette.of(Ink.PAPER));
    header(width);
    rooms();
    furniture();
    options
        .coverage()
        .ifPresent(
            map -> new CoveragePainter(svg, palette, layout.frame()).paint(map, floor.name()));
    options
        .radioOf(floor.name())
        .ifPresent(map -> new RadioPainter(svg, palette, layout.frame()).paint(map));
    openingsUnderLight();
    new WallPainter(svg, palette).paint(floor.walls(), layout.frame());
    openings();
    walks();
    layout.words().forEach(this::words);
    things();
    walkLabels();
    marks();
    scaleBar();
    legend();
    svg.close();
    return svg.toString();
  }

  private String description() {
    String rooms = floor.rooms().stream().map(RoomGeometry::name).collect(Collectors.joining(", "));
    String zones =
        layout.symbols().stream()
            .flatMap(symbol -> symbol.item().zones().stream())
            .distinct()
            .sorted((one, other) -> Integer.compare(one.number(), other.number()))
            .map(zone -> zone.number() + " " + zone.name())
            .collect(Collectors.joining(", "));
    return "Plan of the floor. Rooms: "
        + rooms
        + "."
        + (zones.isEmpty() ? "" : " Zones: " + zones + ".");
  }

  private void header(double width) {
    boolean narrow = options.isNarrow();
    double left = FloorLayout.MARGIN_PIXELS;
    double right =
        layout.legendBeside() ? layout.area().right() : width - FloorLayout.MARGIN_PIXELS;
    double room = right - left - 52;
    double big = narrow ? 16 : 20;
    double small = narrow ? 11 : 12;
    text(Lettering.fit(floor.name(), big, true, room), left, 28, big, true, Ink.TEXT, "start");
    text(
        Lettering.fit(plan.site().name(), small, false, room),
        left,
        47,
        small,
        false,
        Ink.QUIET,
        "start");
    north(new Spot(right - (layout.frame().turned() ? 26 : 12), 34));
  }

  private void north(Spot centre) {
    boolean turned = layout.frame().turned();
    svg.open(
        "g",
        "class",
        "north",
        "transform",
        "rotate("
            + Svg.number(layout.frame().northDegrees())
            + " "
            + Svg.number(centre.x())
            + " "
            + Svg.number(centre.y())
            + ")");
    svg.element(
        "path",
        "d",
        "M"
            + centre.plus(0, -12)
            + "L"
            + centre.plus(6, 12)
            + "L"
            + centre.plus(0, 8)
            + "L"
            + centre.plus(-6, 12)
            + "Z",
        "fill",
        palette.of(Ink.PAPER),
        "stroke",
        palette.of(Ink.TEXT),
        "stroke-width",
        1.1,
        "stroke-linejoin",
        "round");
    svg.element(
        "path",
        "d",
        "M" + centre.plus(0, -12) + "L" + centre.plus(6, 12) + "L" + centre.plus(0, 8) + "Z",
        "fill",
        palette.of(Ink.TEXT));
    svg.close();
    Spot letter = turned ? centre.plus(19, 10 * BASELINE) : centre.plus(0, -15);
    text("N", letter.x(), letter.y(), 10, true, Ink.TEXT, "middle");
  }

  private void rooms() {
    for (RoomGeometry room : floor.rooms()) {
      Optional<RoomUse> use = room.room().use().find();
      svg.open("g", "id", ids.of("room", room.name()), "class", "room", "data-room", room.name());
      svg.text("title", room.name() + use.map(each -> " (" + each.word() + ")").orElse(""));
      svg.element(
          "path",
          "d",
          path(layout.frame().at(room.outline())),
          "fill",
          palette.of(
              options.radioOf(floor.name()).isPresent()
                  ? Ink.PAPER
                  : RoomTint.of(use.orElse(null))));
      svg.close();
    }
  }

  private void furniture() {
    for (Furniture each : layout.furniture(floor)) {
      svg.open("g", "class", "furniture");
      svg.text("title", each.name());
      svg.element(
          "path",
          "d",
          path(layout.frame().at(each.outline())),
          "fill",
          palette.of(Ink.FURNITURE),
          "stroke",
          palette.of(Ink.FURNITURE_EDGE),
          "stroke-width",
          0.9,
          "stroke-linejoin",
          "round");
      svg.close();
    }
  }

  private static String path(List<Spot> corners) {
    return corners.stream().map(Spot::toString).collect(Collectors.joining("L", "M", "Z"));
  }

  private void openingsUnderLight() {
    OpeningPainter painter = new OpeningPainter(svg, palette);
    layout.openings().stream()
        .filter(shape -> Legend.isLit(shape, options))
        .forEach(painter::light);
  }

  private void openings() {
    OpeningPainter painter = new OpeningPainter(svg, palette);
    for (OpeningShape shape : layout.openings()) {
      String name = shape.place().opening().name();
      svg.open(
          "g",
          "id",
          ids.of("opening", name),
          "class",
          Legend.isLit(shape, options) ? "opening lit" : "opening",
          "data-opening",
          name);
      svg.text("title", name + " (" + shape.place().opening().kind().word() + ")");
      painter.paint(shape);
      svg.close();
    }
  }

  private void things() {
    for (PlacedSymbol symbol : layout.symbols()) {
      PlacedSymbol.Item item = symbol.item();
      boolean lit = Legend.isLit(symbol, options);
      String zones =
          item.zones().stream()
              .map(zone -> Integer.toString(zone.number()))
              .collect(Collectors.joining(" "));
      svg.open(
          "g",
          "id",
          ids.of(item.kind(), item.name()),
          "class",
          item.kind()
              + " "
              + item.symbol().ink().name().toLowerCase(Locale.ROOT)
              + (lit ? " lit" : ""),
          "data-" + item.kind(),
          item.name(),
          "data-zone",
          zones);
      svg.text("title", title(item));
      symbol.trueSpot().ifPresent(spot -> tether(symbol.centre(), spot));
      if (lit) {
        svg.element(
            "circle",
            "cx",
            symbol.centre().x(),
            "cy",
            symbol.centre().y(),
            "r",
            symbol.radius() * 1.75,
            "fill",
            palette.of(Ink.HIGHLIGHT),
            "stroke",
            palette.of(Ink.TEXT),
            "stroke-width",
            0.8,
            "stroke-dasharray",
            "3 2");
      }
      layout.chips().stream()
          .filter(chip ->
              chip.severity().isEmpty() && isDevice(item) && chip.owner().equals(item.name()))
          .forEach(this::chip);
      symbols.paint(
          item.symbol(), symbol.centre(), symbol.radius(), bearing(item), !item.placeKnown());
      svg.close();
    }
  }

  /** Which way a symbol's tip points, clockwise from the top of the page. */
  private double bearing(PlacedSymbol.Item item) {
    return item.bearingDegrees().map(each -> each + layout.frame().northDegrees()).orElse(0.0);
  }

  private static boolean isDevice(PlacedSymbol.Item item) {
    return item.kind().equals("device");
  }

  private static String title(PlacedSymbol.Item item) {
    String what = item.name() + " (" + item.symbol().caption() + ")";
    if (item.zones().isEmpty()) {
      return item.words().isEmpty() ? what : what + ", " + item.words();
    }
    String zones =
        item.zones().stream()
            .map((Zone zone) -> zone.number() + " " + zone.name())
            .collect(Collectors.joining(", "));
    return (item.zones().size() == 1 ? "Zone " : "Zones ") + zones + ": " + what;
  }

  private void tether(Spot from, Spot to) {
    leader(from, to);
    svg.element("circle", "cx", to.x(), "cy", to.y(), "r", 1.6, "fill", palette.of(Ink.TEXT));
  }

  private void leader(Spot from, Spot to) {
    svg.element(
        "path",
        "d",
        "M" + from + "L" + to,
        "stroke",
        palette.of(Ink.QUIET),
        "stroke-width",
        0.8,
        "fill",
        "none");
  }

  private void chip(Chip chip) {
    double size = layout.chipSize();
    chip.leader().ifPresent(to -> leader(new Spot(chip.box().centreX(), chip.box().centreY()), to));
    svg.element(
        "rect",
        "x",
        chip.box().x(),
        "y",
        chip.box().y(),
        "width",
        chip.box().width(),
        "height",
        chip.box().height(),
        "rx",
        3.0,
        "fill",
        palette.of(Ink.PAPER),
        "fill-opacity",
        0.86);
    text(
        chip.text(),
        chip.box().centreX(),
        chip.box().centreY() + size * BASELINE,
        size,
        true,
        Ink.TEXT,
        "middle");
  }

  private void walks() {
    WalkPainter painter = new WalkPainter(svg, palette);
    layout.walks().forEach(walk -> painter.paint(walk, layout.frame()));
  }

  private void walkLabels() {
    Set<String> owners = layout.walks().stream().map(FloorWalk::owner).collect(Collectors.toSet());
    layout.chips().stream()
        .filter(chip -> chip.severity().isEmpty() && owners.contains(chip.owner()))
        .forEach(this::chip);
  }

  private void marks() {
    for (Chip chip : layout.chips()) {
      chip.severity().ifPresent(severity -> flag(chip, severity));
    }
  }

  /** A flag: solid for an error, framed for a warning, framed with broken lines for advice. */
  private void flag(Chip chip, Severity severity) {
    Ink ink = ink(severity);
    svg.open("g", "class", "mark " + severity.word(), "data-mark", chip.text());
    svg.text("title", "Finding " + chip.text() + " (" + severity.word() + "): " + chip.owner());
    chip.leader().ifPresent(to -> leader(new Spot(chip.box().centreX(), chip.box().centreY()), to));
    flagShape(
        chip.box().x(), chip.box().centreY(), chip.box().width(), chip.box().height(), severity);
    double size = layout.chipSize();
    text(
        chip.text(),
        chip.box().centreX() - 2.5,
        chip.box().centreY() + size * BASELINE,
        size,
        true,
        severity == Severity.ERROR ? Ink.PAPER : ink,
        "middle");
    svg.close();
  }

  private void flagShape(double x, double y, double width, double height, Severity severity) {
    Ink ink = ink(severity);
    double half = height / 2;
    svg.element(
        "path",
        "d",
        "M"
            + new Spot(x, y - half)
            + "L"
            + new Spot(x + width - half * 0.8, y - half)
            + "L"
            + new Spot(x + width, y)
            + "L"
            + new Spot(x + width - half * 0.8, y + half)
            + "L"
            + new Spot(x, y + half)
            + "Z",
        "fill",
        palette.of(severity == Severity.ERROR ? ink : Ink.PAPER),
        "stroke",
        palette.of(ink),
        "stroke-width",
        1.3,
        "stroke-linejoin",
        "round",
        "stroke-dasharray",
        severity == Severity.ADVICE ? "2.5 2" : "none");
  }

  private static Ink ink(Severity severity) {
    return switch (severity) {
      case ERROR -> Ink.ERROR;
      case WARNING -> Ink.WARNING;
      case ADVICE -> Ink.NOTE;
    };
  }

  private void words(Words words) {
    double x = words.box().centreX();
    double y = words.box().centreY();
    double total =
        words.lines().stream().mapToDouble(line -> line.size() * Words.LINE_HEIGHT).sum();
    double top = -total / 2;
    for (Words.Line line : words.lines()) {
      double height = line.size() * Words.LINE_HEIGHT;
      double baseline = top + height / 2 + line.size() * BASELINE;
      if (words.upright()) {
        svg.text(
            "text",
            line.text(),
            "transform",
            "translate(" + Svg.number(x + baseline) + " " + Svg.number(y) + ") rotate(-90)",
            "font-size",
            line.size(),
            "font-weight",
            line.bold() ? "bold" : "normal",
            "text-anchor",
            "middle",
            "fill",
            palette.of(line.ink()));
      } else {
        text(line.text(), x, y + baseline, line.size(), line.bold(), line.ink(), "middle");
      }
      top += height;
    }
  }

  private void scaleBar() {
    boolean feet = floor.floor().unit() == DrawingUnit.FEET;
    double unit = layout.frame().scale() * (feet ? METRES_A_FOOT : 1);
    double most = Math.min(170, layout.area().width() * 0.4);
    double length = 0.5;
    for (double step : new double[] {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 10_000, 100_000}) {
      if (step * unit <= most) {
        length = step;
      }
    }
    double x = layout.area().x() + 4;
    double y = layout.area().bottom() + 14;
    double half = length * unit / 2;
    svg.open("g", "class", "scale-bar");
    for (int i = 0; i < 2; i++) {
      svg.element(
          "rect",
          "x",
          x + i * half,
          "y",
          y - 2.5,
          "width",
          half,
          "height",
          5.0,
          "fill",
          palette.of(i == 0 ? Ink.TEXT : Ink.PAPER),
          "stroke",
          palette.of(Ink.TEXT),
          "stroke-width",
          1);
    }
    text("0", x, y + 15, 10, false, Ink.QUIET, "middle");
    text(
        Svg.number(length) + (feet ? " ft" : " m"),
        x + 2 * half,
        y + 15,
        10,
        false,
        Ink.QUIET,
        "middle");
    svg.close();
  }

  private void legend() {
    double size = Legend.textSize(options);
    svg.open("g", "class", "legend");
    text(
        "Legend",
        legend.heading().x(),
        legend.heading().y() + 4,
        size + 1,
        true,
        Ink.TEXT,
        "start");
    for (Legend.Placed placed : legend.entries()) {
      icon(placed);
      double y = placed.words().y() + size * BASELINE;
      for (String line : placed.lines()) {
        text(line, placed.words().x(), y, size, false, Ink.TEXT, "start");
        y += Legend.LINE_PIXELS;
      }
    }
    for (Legend.Note note : legend.notes()) {
      text(
          note.text(),
          note.at().x(),
          note.at().y() + size * BASELINE,
          size,
          false,
          Ink.QUIET,
          "start");
    }
    svg.close();
  }

  private void icon(Legend.Placed placed) {
    Spot at = placed.icon();
    switch (placed.entry()) {
      case Legend.Entry.OfSymbol(Symbol symbol) -> symbols.paint(symbol, at, 7, 0, false);
      case Legend.Entry.OfWall(WallLook look) -> new WallPainter(svg, palette).sample(look, at);
      case Legend.Entry.OfOpening(var kind) -> OpeningSample.paint(svg, palette, kind, at);
      case Legend.Entry.ZoneNumber() ->
          text("12", at.x(), at.y() + 10.5 * BASELINE, 10.5, true, Ink.TEXT, "middle");
      case Legend.Entry.PlaceNotStated() -> symbols.paint(Symbol.CONTACT, at, 7, 0, true);
      case Legend.Entry.OfMark(Severity severity) ->
          flagShape(at.x() - 10, at.y(), 20, 12, severity);
      case Legend.Entry.Lit() ->
          svg.element(
              "circle",
              "cx",
              at.x(),
              "cy",
              at.y(),
              "r",
              8.0,
              "fill",
              palette.of(Ink.HIGHLIGHT),
              "stroke",
              palette.of(Ink.TEXT),
              "stroke-width",
              0.8,
              "stroke-dasharray",
              "3 2");
      case Legend.Entry.OfWalk(SiteWalk.Kind kind) ->
          new WalkPainter(svg, palette).sample(kind, at);
      case Legend.Entry.Seen() -> CoveragePainter.seenSample(svg, palette, at);
      case Legend.Entry.Heard() -> CoveragePainter.heardSample(svg, palette, at);
      case Legend.Entry.Beam() -> CoveragePainter.beamSample(svg, palette, at);
      case Legend.Entry.OfRadio(RadioPainter.Band band, double ignored) ->
          RadioPainter.sample(svg, palette, band, at);
      case Legend.Entry.Unseen() -> CoveragePainter.unseenSample(svg, palette, at);
      case Legend.Entry.Letter(String letter, String ignored) ->
          text(letter, at.x(), at.y() + 11 * BASELINE, 11, true, Ink.TEXT, "middle");
    }
  }

  private void text(
      String text, double x, double y, double size, boolean bold, Ink ink, String anchor) {
    svg.label(text, x, y, size, bold, anchor, palette.of(ink));
  }
}
