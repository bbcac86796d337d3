package keenward.drawing.floor;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import keenward.core.building.FloorGeometry;
import keenward.core.building.WallSegment;
import keenward.core.building.coverage.CoverageMap;
import keenward.core.building.walking.SiteWalk;
import keenward.core.plan.OpeningKind;
import keenward.core.rules.Severity;
import keenward.drawing.svg.Box;
import keenward.drawing.svg.Lettering;

/**
 * Explains what occurs in a drawing, and nothing else.
 *
 * @param heading place of the heading
 * @param entries entries in their places
 * @param notes lines below, in their places
 * @param bottom lower edge
 */
record Legend(Spot heading, List<Placed> entries, List<Note> notes, double bottom) {

  static final double ICON_PIXELS = 34;
  static final double LINE_PIXELS = 14;
  private static final double GAP_PIXELS = 7;
  private static final double LEAST_COLUMN_PIXELS = 150;

  /** What an entry shows. */
  sealed interface Entry {

    String caption();

    record OfSymbol(Symbol symbol) implements Entry {
      @Override
      public String caption() {
        return symbol.caption();
      }
    }

    record OfWall(WallLook look) implements Entry {
      @Override
      public String caption() {
        return look.caption();
      }
    }

    record OfOpening(OpeningKind kind) implements Entry {
      @Override
      public String caption() {
        return switch (kind) {
          case DOOR -> "door";
          case DOUBLE_DOOR -> "double door";
          case SLIDING_DOOR -> "sliding door";
          case DOORWAY -> "doorway";
          case WINDOW -> "window";
          case FIXED_WINDOW -> "fixed window";
          case ROLLER_SHUTTER -> "roller shutter";
          case ROOF_WINDOW -> "roof window";
          case HATCH -> "hatch";
          case GATE -> "gate";
        };
      }
    }

    record ZoneNumber() implements Entry {
      @Override
      public String caption() {
        return "zone number";
      }
    }

    record PlaceNotStated() implements Entry {
      @Override
      public String caption() {
        return "only the room is stated";
      }
    }

    record OfMark(Severity severity) implements Entry {
      @Override
      public String caption() {
        return "finding: " + severity.word();
      }
    }

    record Lit() implements Entry {
      @Override
      public String caption() {
        return "lit: the zone or opening in question";
      }
    }

    record Seen() implements Entry {
      @Override
      public String caption() {
        return "seen by a motion detector; darker: by several";
      }
    }

    record Heard() implements Entry {
      @Override
      public String caption() {
        return "panes here are heard breaking";
      }
    }

    record Beam() implements Entry {
      @Override
      public String caption() {
        return "beam";
      }
    }

    record Unseen() implements Entry {
      @Override
      public String caption() {
        return "a person can stand here unseen";
      }
    }

    record OfRadio(RadioPainter.Band band, double reserveDecibels) implements Entry {
      @Override
      public String caption() {
        return band.caption(reserveDecibels);
      }
    }

    record OfWalk(SiteWalk.Kind kind) implements Entry {
      @Override
      public String caption() {
        return switch (kind) {
          case ENTRY -> "walk in; number and time";
          case EXIT -> "walk out; number and time";
          case NIGHT -> "walk at night; number and time";
          case ASKED -> "walk; number and time";
        };
      }
    }

    record Letter(String letter, String name) implements Entry {
      @Override
      public String caption() {
        return name;
      }
    }
  }

  /**
   * An entry in its place.
   *
   * @param entry the entry
   * @param icon centre of its icon
   * @param words left end of the first line's middle
   * @param lines its caption
   */
  record Placed(Entry entry, Spot icon, Spot words, List<String> lines) {}

  /**
   * A line of small print.
   *
   * @param at left end of its middle
   * @param text the text
   */
  record Note(Spot at, String text) {}

  /** The legend of a layout. */
  static Legend of(FloorLayout layout, FloorGeometry floor, FloorOptions options) {
    double size = textSize(options);
    boolean beside = layout.legendBeside();
    double left =
        beside ? layout.area().right() + FloorLayout.MARGIN_PIXELS : FloorLayout.MARGIN_PIXELS;
    double width =
        beside ? FloorLayout.LEGEND_PIXELS : options.widthPixels() - 2 * FloorLayout.MARGIN_PIXELS;
    double top = beside ? layout.area().y() + 8 : layout.area().bottom() + 46;
    int columns = beside ? 1 : Math.max(1, (int) (width / LEAST_COLUMN_PIXELS));
    double column = width / columns;

    List<Placed> placed = new ArrayList<>();
    List<Entry> entries = entries(layout, floor, options);
    double y = top + 20;
    for (int row = 0; row < entries.size(); row += columns) {
      int most = 1;
      for (int i = row; i < Math.min(row + columns, entries.size()); i++) {
        double x = left + (i - row) * column;
        List<String> lines =
            Lettering.wrap(entries.get(i).caption(), size, false, column - ICON_PIXELS - 8);
        most = Math.max(most, lines.size());
        placed.add(
            new Placed(
                entries.get(i),
                new Spot(x + ICON_PIXELS / 2 - 4, y + LINE_PIXELS / 2),
                new Spot(x + ICON_PIXELS, y + LINE_PIXELS / 2),
                lines));
      }
      y += most * LINE_PIXELS + GAP_PIXELS;
    }
    List<Note> notes = new ArrayList<>();
    y += layout.notes().isEmpty() ? 0 : 4;
    for (String note : layout.notes()) {
      for (String line : Lettering.wrap(note, size, false, width)) {
        notes.add(new Note(new Spot(left, y + LINE_PIXELS / 2), line));
        y += LINE_PIXELS;
      }
      y += 4;
    }
    return new Legend(new Spot(left, top + 6), placed, notes, y);
  }

  static double textSize(FloorOptions options) {
    return options.isNarrow() ? 10 : 11;
  }

  private static List<Entry> entries(
      FloorLayout layout, FloorGeometry floor, FloorOptions options) {
    List<Entry> entries = new ArrayList<>();
    boolean hasNumbers =
        layout.symbols().stream().anyMatch(symbol -> !symbol.item().zones().isEmpty());
    if (hasNumbers) {
      entries.add(new Entry.ZoneNumber());
    }
    Set<Symbol> symbols = EnumSet.noneOf(Symbol.class);
    layout.symbols().forEach(symbol -> symbols.add(symbol.item().symbol()));
    symbols.forEach(symbol -> entries.add(new Entry.OfSymbol(symbol)));
    if (layout.symbols().stream().anyMatch(symbol -> !symbol.item().placeKnown())) {
      entries.add(new Entry.PlaceNotStated());
    }
    Set<OpeningKind> openings = EnumSet.noneOf(OpeningKind.class);
    layout.openings().forEach(shape -> openings.add(shape.place().opening().kind()));
    openings.forEach(kind -> entries.add(new Entry.OfOpening(kind)));
    Set<WallLook> walls = EnumSet.noneOf(WallLook.class);
    for (WallSegment wall : floor.walls()) {
      walls.add(WallLook.of(wall));
    }
    walls.forEach(look -> entries.add(new Entry.OfWall(look)));
    boolean lit =
        layout.symbols().stream().anyMatch(symbol -> isLit(symbol, options))
            || layout.openings().stream().anyMatch(shape -> isLit(shape, options));
    if (lit) {
      entries.add(new Entry.Lit());
    }
    Set<Severity> severities = EnumSet.noneOf(Severity.class);
    layout.chips().forEach(chip -> chip.severity().ifPresent(severities::add));
    severities.forEach(severity -> entries.add(new Entry.OfMark(severity)));
    Optional<CoverageMap> coverage = options.coverage();
    if (coverage.isPresent()) {
      if (!CoveragePainter.views(coverage.get(), floor.name()).isEmpty()) {
        entries.add(new Entry.Seen());
      }
      if (!CoveragePainter.hearings(coverage.get(), floor.name()).isEmpty()) {
        entries.add(new Entry.Heard());
      }
      if (!CoveragePainter.beams(coverage.get(), floor.name()).isEmpty()) {
        entries.add(new Entry.Beam());
      }
      if (!CoveragePainter.gaps(coverage.get(), floor.name()).isEmpty()) {
        entries.add(new Entry.Unseen());
      }
    }
    options
        .radioOf(floor.name())
        .ifPresent(map ->
            RadioPainter.bands(map)
                .forEach(band -> entries.add(new Entry.OfRadio(band, map.reserveDecibels()))));
    Set<SiteWalk.Kind> walks = EnumSet.noneOf(SiteWalk.Kind.class);
    layout.walks().forEach(walk -> walks.add(walk.kind()));
    walks.forEach(kind -> entries.add(new Entry.OfWalk(kind)));
    for (FloorLayout.RoomLetter letter : layout.letters()) {
      entries.add(new Entry.Letter(letter.letter(), letter.room()));
    }
    return entries;
  }

  static boolean isLit(PlacedSymbol symbol, FloorOptions options) {
    return symbol.item().zones().stream()
        .anyMatch(zone -> options.litZones().contains(zone.number()));
  }

  static boolean isLit(OpeningShape shape, FloorOptions options) {
    return options.litOpenings().contains(shape.place().opening().name());
  }

  /** What the words of an entry cover, for checks. */
  Box box(Placed placed, double size) {
    double width =
        placed.lines().stream()
            .mapToDouble(line -> Lettering.width(line, size, false))
            .max()
            .orElse(0);
    return new Box(
        placed.words().x(),
        placed.words().y() - LINE_PIXELS / 2,
        width,
        placed.lines().size() * LINE_PIXELS);
  }
}
