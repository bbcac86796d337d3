package keenward.drawing.floor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.building.Building;
import keenward.core.plan.Floor;
import keenward.core.plan.Room;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.drawing.svg.Identifiers;
import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Lettering;
import keenward.drawing.svg.Palette;
import keenward.drawing.svg.Svg;

/**
 * A picture of a site that has no drawing: a box for each room with its zones, or for each
 * partition where zones have no room. Says which line would bring a real drawing.
 */
public final class SchematicDrawing {

  private static final double BASELINE = 0.36;
  private static final double MARGIN = 16;
  private static final double GAP = 14;
  private static final double LEAST_COLUMN = 230;
  private static final double HEADING = 30;
  private static final double ROW = 26;
  private static final double PADDING = 10;
  private static final double TOP = 76;

  private final SitePlan plan;
  private final FloorOptions options;
  private final Palette palette;
  private final Svg svg = new Svg();
  private final SymbolPainter symbols;

  private record Group(String name, Ink tint, List<Zone> zones) {

    double height() {
      return HEADING + Math.max(1, zones.size()) * ROW + PADDING / 2;
    }
  }

  private SchematicDrawing(SitePlan plan, FloorOptions options) {
    this.plan = plan;
    this.options = options;
    palette = options.palette();
    symbols = new SymbolPainter(svg, palette);
  }

  /** The picture; lit zones of the options are lit, marks are not shown. */
  public static String svg(SitePlan plan, Building building, FloorOptions options) {
    return new SchematicDrawing(plan, options).paint(groups(plan, building));
  }

  /** Zones by room; those without one by their first partition. */
  private static List<Group> groups(SitePlan plan, Building building) {
    Map<String, Group> groups = new LinkedHashMap<>();
    for (Floor floor : plan.floors()) {
      for (Room room : floor.rooms()) {
        groups.put(
            "room " + room.name(),
            new Group(room.name(), RoomTint.of(room.use().orNull()), new ArrayList<>()));
      }
    }
    for (Zone zone : plan.zones()) {
      String key =
          roomOf(zone, building)
              .map(room -> "room " + room)
              .orElse("partition " + zone.partitions().getFirst());
      groups
          .computeIfAbsent(
              key,
              ignored ->
                  new Group(
                      plan.hasPartitions() ? zone.partitions().getFirst() : "No room stated",
                      Ink.ANY_USE,
                      new ArrayList<>()))
          .zones()
          .add(zone);
    }
    return List.copyOf(groups.values());
  }

  private static Optional<String> roomOf(Zone zone, Building building) {
    return zone.devices().stream()
        .filter(ZoneDevice.Fitted.class::isInstance)
        .map(ZoneDevice.Fitted.class::cast)
        .flatMap(fitted -> building.findDevice(fitted.device().name()).stream())
        .flatMap(place -> place.room().stream())
        .findFirst();
  }

  private String paint(List<Group> groups) {
    double room = options.widthPixels() - 2 * MARGIN;
    int columns = Math.max(1, (int) ((room + GAP) / (LEAST_COLUMN + GAP)));
    double width = (room - GAP * (columns - 1)) / columns;
    double[] bottoms = new double[columns];
    Arrays.fill(bottoms, TOP);
    List<double[]> places = new ArrayList<>();
    for (Group group : groups) {
      int shortest = 0;
      for (int i = 1; i < columns; i++) {
        shortest = bottoms[i] < bottoms[shortest] ? i : shortest;
      }
      places.add(new double[] {MARGIN + shortest * (width + GAP), bottoms[shortest]});
      bottoms[shortest] += group.height() + GAP;
    }
    double height = MARGIN - GAP;
    for (double bottom : bottoms) {
      height = Math.max(height, bottom + MARGIN - GAP);
    }
    Identifiers ids = new Identifiers(options.idPrefix());
    head(ids, Math.ceil(height));
    for (int i = 0; i < groups.size(); i++) {
      box(groups.get(i), places.get(i)[0], places.get(i)[1], width, ids);
    }
    svg.close();
    return svg.toString();
  }

  private void head(Identifiers ids, double height) {
    String titleId = ids.of("title", plan.site().name());
    String describedId = ids.of("described", plan.site().name());
    svg.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "class",
        "schematic-drawing",
        "role",
        "img",
        "aria-labelledby",
        titleId + " " + describedId,
        "viewBox",
        "0 0 " + Svg.number(options.widthPixels()) + " " + Svg.number(height),
        "width",
        Math.floor(options.widthPixels()),
        "height",
        height,
        "font-family",
        options.faces());
    svg.text("title", plan.site().name(), "id", titleId);
    svg.text("desc", "Rooms or partitions and their zones; not to scale.", "id", describedId);
    svg.element(
        "rect", "width", options.widthPixels(), "height", height, "fill", palette.of(Ink.PAPER));
    double room = options.widthPixels() - 2 * MARGIN;
    text(
        Lettering.fit(plan.site().name(), 18, true, room), MARGIN, 30, 18, true, Ink.TEXT, "start");
    text(
        Lettering.fit("No drawing: add floors: with rooms and their outlines", 11, false, room),
        MARGIN,
        50,
        11,
        false,
        Ink.QUIET,
        "start");
  }

  private void box(Group group, double x, double y, double width, Identifiers ids) {
    svg.open("g", "class", "room", "data-room", group.name());
    svg.element(
        "rect",
        "x",
        x,
        "y",
        y,
        "width",
        width,
        "height",
        group.height(),
        "rx",
        4.0,
        "fill",
        palette.of(group.tint()),
        "stroke",
        palette.of(Ink.RULE),
        "stroke-width",
        1.2);
    text(
        Lettering.fit(group.name(), 13, true, width - 2 * PADDING),
        x + PADDING,
        y + 20,
        13,
        true,
        Ink.TEXT,
        "start");
    double middle = y + HEADING + ROW / 2 - 2;
    if (group.zones().isEmpty()) {
      text("no zones", x + PADDING, middle + 11 * BASELINE, 11, false, Ink.QUIET, "start");
    }
    for (Zone zone : group.zones()) {
      zone(zone, x, middle, width, ids);
      middle += ROW;
    }
    svg.close();
  }

  private void zone(Zone zone, double x, double middle, double width, Identifiers ids) {
    boolean lit = options.litZones().contains(zone.number());
    svg.open(
        "g",
        "id",
        ids.of("zone", Integer.toString(zone.number())),
        "class",
        lit ? "zone lit" : "zone",
        "data-zone",
        Integer.toString(zone.number()));
    svg.text(
        "title", "Zone " + zone.number() + " " + zone.name() + " (" + zone.response().word() + ")");
    if (lit) {
      svg.element(
          "rect",
          "x",
          x + 3,
          "y",
          middle - ROW / 2 + 1,
          "width",
          width - 6,
          "height",
          ROW - 2,
          "rx",
          3.0,
          "fill",
          palette.of(Ink.HIGHLIGHT),
          "stroke",
          palette.of(Ink.TEXT),
          "stroke-width",
          0.8,
          "stroke-dasharray",
          "3 2");
    }
    zone.devices().stream()
        .findFirst()
        .ifPresent(device ->
            symbols.paint(
                Symbol.of(device.kind()), new Spot(x + PADDING + 10, middle), 7.5, 0, false));
    text(
        Integer.toString(zone.number()), x + 60, middle + 12 * BASELINE, 12, true, Ink.TEXT, "end");
    text(
        Lettering.fit(zone.name(), 12, false, width - 70 - PADDING),
        x + 70,
        middle + 12 * BASELINE,
        12,
        false,
        Ink.TEXT,
        "start");
    svg.close();
  }

  private void text(
      String text, double x, double y, double size, boolean bold, Ink ink, String anchor) {
    svg.label(text, x, y, size, bold, anchor, palette.of(ink));
  }
}
