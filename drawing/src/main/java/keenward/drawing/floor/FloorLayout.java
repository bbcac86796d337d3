package keenward.drawing.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import keenward.core.building.Building;
import keenward.core.building.FloorGeometry;
import keenward.core.building.OpeningPlace;
import keenward.core.building.RoomGeometry;
import keenward.core.building.WallSegment;
import keenward.core.plan.Furniture;
import keenward.core.plan.Opening;
import keenward.core.plan.Point;
import keenward.core.plan.Room;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.rules.Involved;
import keenward.drawing.svg.Box;
import keenward.drawing.svg.Ink;
import keenward.drawing.svg.Lettering;

/**
 * Where everything of a floor's drawing goes.
 *
 * @param frame metres to pixels
 * @param area what the plan itself covers
 * @param openings openings
 * @param symbols symbols
 * @param chips zone numbers and flags
 * @param words names of rooms and furniture, words beside stairs
 * @param letters letters that stand for names that had no room
 * @param notes what is not on the drawing
 * @param walks parts of walks on this floor
 * @param legendBeside whether the legend stands to the right of the plan
 * @param chipSize font size of chips
 */
record FloorLayout(
    Frame frame,
    Box area,
    List<OpeningShape> openings,
    List<PlacedSymbol> symbols,
    List<Chip> chips,
    List<Words> words,
    List<RoomLetter> letters,
    List<String> notes,
    List<FloorWalk> walks,
    boolean legendBeside,
    double chipSize) {

  /**
   * A letter that stands for a name.
   *
   * @param letter the letter
   * @param room the name
   */
  record RoomLetter(String letter, String room) {}

  static final double HEADER_PIXELS = 50;
  static final double MARGIN_PIXELS = 16;
  static final double LEGEND_PIXELS = 218;

  /** Room round the rooms for outer walls and outside devices. */
  private static final double EDGE_PIXELS = 30;

  private static final double NARROW_EDGE_PIXELS = 22;

  private static final double MOST_PIXELS_A_METRE = 80;
  private static final double TALLEST_PIXELS = 740;
  private static final double TALLEST_NARROW_PIXELS = 1100;
  private static final double LEGEND_BESIDE_FROM = 860;

  /** A legend below, or a turned floor, has to make the plan this much larger. */
  private static final double WORTH_IT = 1.25;

  static final double WALL_PRICE = 40;
  private static final double OPENING_PRICE = 24;
  private static final double SWING_PRICE = 9;
  private static final double FURNITURE_PRICE = 3;
  private static final double WALK_PRICE = 12;

  static FloorLayout of(
      SitePlan plan, Building building, FloorGeometry floor, FloorOptions options) {
    return new Maker(plan, building, floor, options).make();
  }

  /** Numbers of a device's zones as its chip shows them. */
  static String numbers(List<Zone> zones) {
    return zones.stream()
        .map(zone -> Integer.toString(zone.number()))
        .collect(Collectors.joining(", "));
  }

  private static final class Maker {

    private final SitePlan plan;
    private final Building building;
    private final FloorGeometry floor;
    private final FloorOptions options;
    private final double edge;
    private final double nameSize;
    private final boolean legendBeside;
    private final Frame frame;
    private final double radius;
    private final double chipSize;
    private final Obstacles obstacles = new Obstacles();
    private final List<Chip> chips = new ArrayList<>();
    private final List<Words> words = new ArrayList<>();
    private final List<RoomLetter> letters = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();

    Maker(SitePlan plan, Building building, FloorGeometry floor, FloorOptions options) {
      this.plan = plan;
      this.building = building;
      this.floor = floor;
      this.options = options;
      edge = options.isNarrow() ? NARROW_EDGE_PIXELS : EDGE_PIXELS;
      legendBeside =
          options.widthPixels() >= LEGEND_BESIDE_FROM
              && scale(true, false) * WORTH_IT > scale(false, false);
      boolean turned = options.isNarrow() && scale(false, true) > scale(false, false) * WORTH_IT;
      frame = frame(turned);
      radius = Math.clamp(frame.scale() * 0.24, 6.5, 9);
      chipSize = options.isNarrow() ? 9 : radius < 8.5 ? 10 : 11;
      nameSize = options.isNarrow() || radius < 7 ? 11 : 13;
    }

    FloorLayout make() {
      Box area = area();
      List<OpeningShape> openings =
          floor.openings().stream().map(place -> OpeningShape.of(place, frame)).toList();
      List<Furniture> furniture = new ArrayList<>();
      List<String> astray = new ArrayList<>();
      for (Furniture each : floor.floor().furniture()) {
        if (isOn(frame, area, each)) {
          furniture.add(each);
        } else {
          astray.add(each.name());
        }
      }
      note("Furniture off the floor", astray);
      addObstacles(openings, furniture);
      List<PlacedSymbol> symbols = placeSymbols(area, openings);
      placeChips(area, symbols, openings);
      List<FloorWalk> walks = FloorWalk.of(options.walks(), floor.name());
      placeWalkLabels(area, walks);
      placeFurnitureNames(furniture);
      placeRoomNames(area, furniture);
      noteWhatIsMissing();
      return new FloorLayout(
          frame,
          area,
          openings,
          symbols,
          chips,
          words,
          letters,
          notes,
          walks,
          legendBeside,
          chipSize);
    }

    /** The corners of the rooms' extent that lie south-west and north-east. */
    private List<Point> corners() {
      double west = Double.POSITIVE_INFINITY;
      double east = Double.NEGATIVE_INFINITY;
      double south = Double.POSITIVE_INFINITY;
      double north = Double.NEGATIVE_INFINITY;
      for (Point point : extent()) {
        west = Math.min(west, point.xMetres());
        east = Math.max(east, point.xMetres());
        south = Math.min(south, point.yMetres());
        north = Math.max(north, point.yMetres());
      }
      return List.of(new Point(west, south), new Point(east, north));
    }

    /** The scale that fits. */
    private double scale(boolean beside, boolean turned) {
      Point least = corners().getFirst();
      Point most = corners().getLast();
      double eastward = most.xMetres() - least.xMetres();
      double northward = most.yMetres() - least.yMetres();
      double room =
          options.widthPixels()
              - 2 * MARGIN_PIXELS
              - 2 * edge
              - (beside ? LEGEND_PIXELS + MARGIN_PIXELS : 0);
      double tallest = (options.isNarrow() ? TALLEST_NARROW_PIXELS : TALLEST_PIXELS) - 2 * edge;
      double across = turned ? northward : eastward;
      double down = turned ? eastward : northward;
      return Math.min(MOST_PIXELS_A_METRE, Math.min(room / across, tallest / down));
    }

    private Frame frame(boolean turned) {
      Point least = corners().getFirst();
      Point most = corners().getLast();
      return new Frame(
          MARGIN_PIXELS + edge,
          HEADER_PIXELS + 6 + edge,
          turned ? least : new Point(least.xMetres(), most.yMetres()),
          scale(legendBeside, turned),
          turned);
    }

    /** Points that the drawing has to show. */
    private List<Point> extent() {
      List<Point> points = new ArrayList<>();
      floor.rooms().forEach(room -> points.addAll(room.outline()));
      for (OpeningPlace place : floor.openings()) {
        // A leaf that opens outwards sweeps as far as it is wide.
        OpeningShape shape = OpeningShape.of(place, new Frame(0, 0, new Point(0, 0), 1, false));
        for (OpeningShape.Leaf leaf : shape.leaves()) {
          points.add(new Point(leaf.open().x(), -leaf.open().y()));
        }
      }
      return points;
    }

    private Box area() {
      double right = 0;
      double bottom = 0;
      for (Point point : extent()) {
        right = Math.max(right, frame.at(point).x());
        bottom = Math.max(bottom, frame.at(point).y());
      }
      double left = frame.left() - edge;
      double top = frame.top() - edge;
      return new Box(left, top, right + edge - left, bottom + edge - top);
    }

    private void addObstacles(List<OpeningShape> openings, List<Furniture> furniture) {
      for (WallSegment wall : floor.walls()) {
        double thickness = WallLook.of(wall).pixels(frame.scale()) + 1;
        obstacles.line(frame.at(wall.start()), frame.at(wall.end()), thickness, WALL_PRICE);
      }
      for (OpeningShape opening : openings) {
        obstacles.line(opening.left(), opening.right(), opening.thickness() + 8, OPENING_PRICE);
        for (OpeningShape.Leaf leaf : opening.leaves()) {
          obstacles.line(leaf.hinge(), leaf.open(), 2, SWING_PRICE);
          List<Spot> arc = leaf.arc();
          for (int i = 1; i < arc.size(); i++) {
            obstacles.line(arc.get(i - 1), arc.get(i), 1, SWING_PRICE / 2);
            // Spokes, so that the floor under the leaf is left clear too.
            obstacles.line(leaf.hinge(), arc.get(i), 1, SWING_PRICE / 3);
          }
        }
      }
      for (Furniture each : furniture) {
        obstacles.outline(frame.at(each.outline()), 1, FURNITURE_PRICE);
      }
    }

    private List<PlacedSymbol> placeSymbols(Box area, List<OpeningShape> openings) {
      List<PlacedSymbol> symbols = new ArrayList<>();
      List<String> left = new ArrayList<>();
      SymbolPlacer placer = new SymbolPlacer(obstacles, frame, area, radius);
      for (FloorItems.Wish wish :
          new FloorItems(plan, building, floor, frame, openings, radius).collect()) {
        placer.place(wish).ifPresentOrElse(symbols::add, () -> left.add(wish.item().name()));
      }
      note("No room on the drawing for", left);
      return symbols;
    }

    private void placeChips(Box area, List<PlacedSymbol> symbols, List<OpeningShape> openings) {
      ChipPlacer placer = new ChipPlacer(obstacles, frame, floor, area, chipSize);
      List<String> left = new ArrayList<>();
      for (PlacedSymbol symbol : symbols) {
        List<Zone> zones = symbol.item().zones();
        if (!zones.isEmpty()) {
          String name = symbol.item().name();
          placer
              .place(name, numbers(zones), symbol.box(), Optional.empty())
              .ifPresentOrElse(chips::add, () -> left.add(numbers(zones) + " (" + name + ")"));
        }
        if (!symbol.item().words().isEmpty()) {
          placeStairWords(placer, symbol);
        }
      }
      note("No room on the drawing for zone number", left);
      for (FloorMark mark : options.marks()) {
        placeMark(placer, mark, symbols, openings);
      }
    }

    /** A label beside its line, half way along it. */
    private void placeWalkLabels(Box area, List<FloorWalk> walks) {
      for (FloorWalk walk : walks) {
        List<Spot> spots = frame.at(walk.level().points());
        for (int i = 1; i < spots.size(); i++) {
          obstacles.line(spots.get(i - 1), spots.get(i), 3, WALK_PRICE);
        }
      }
      ChipPlacer placer = new ChipPlacer(obstacles, frame, floor, area, chipSize);
      List<String> left = new ArrayList<>();
      for (FloorWalk walk : walks) {
        Spot middle = frame.at(walk.level().at(walk.level().metres() / 2));
        placer
            .place(
                walk.owner(),
                walk.label(),
                Box.around(middle.x(), middle.y(), 3, 3),
                Optional.empty())
            .ifPresentOrElse(chips::add, () -> left.add(walk.label()));
      }
      note("No room on the drawing for the time of walk", left);
    }

    private void placeStairWords(ChipPlacer placer, PlacedSymbol symbol) {
      placer
          .placeWords(symbol.item().words(), symbol.box())
          .ifPresentOrElse(
              words::add, () -> notes.add(symbol.item().name() + ": " + symbol.item().words()));
    }

    private void placeMark(
        ChipPlacer placer,
        FloorMark mark,
        List<PlacedSymbol> symbols,
        List<OpeningShape> openings) {
      Involved involved = mark.involved();
      for (PlacedSymbol symbol : symbols) {
        boolean isDevice = symbol.item().kind().equals("device");
        boolean named = isDevice && involved.devices().contains(symbol.item().name());
        boolean byZone =
            symbol.item().zones().stream()
                .anyMatch(zone -> involved.zones().contains(zone.number()));
        if (named || byZone) {
          placeFlag(placer, mark, symbol.item().name(), symbol.box());
        }
      }
      for (OpeningShape opening : openings) {
        String name = opening.place().opening().name();
        if (involved.openings().contains(name)) {
          placeFlag(
              placer, mark, name, Box.around(opening.middle().x(), opening.middle().y(), 8, 8));
        }
      }
      for (RoomGeometry room : floor.rooms()) {
        if (involved.rooms().contains(room.name())) {
          Spot centre = frame.at(room.centre());
          placeFlag(placer, mark, room.name(), Box.around(centre.x(), centre.y(), 4, 4));
        }
      }
    }

    private void placeFlag(ChipPlacer placer, FloorMark mark, String owner, Box anchor) {
      placer
          .place(owner, mark.label(), anchor, Optional.of(mark.severity()))
          .ifPresentOrElse(
              chips::add, () -> notes.add("Flag " + mark.label() + " also stands at " + owner));
    }

    private void placeRoomNames(Box area, List<Furniture> furniture) {
      List<Box> avoided = furniture.stream().map(each -> bounds(frame.at(each.outline()))).toList();
      RoomNamer namer = new RoomNamer(obstacles, frame, area, avoided, nameSize);
      List<String> left = new ArrayList<>();
      for (RoomGeometry room : floor.rooms()) {
        String letter = letter(letters.size());
        Optional<Words> placed = namer.place(room, floor.floor().unit(), letter);
        placed.ifPresentOrElse(words::add, () -> left.add(room.name()));
        if (placed.filter(each -> RoomNamer.isLetter(each, letter)).isPresent()) {
          letters.add(new RoomLetter(letter, room.name()));
        }
      }
      note("No room on the drawing for the name of", left);
    }

    /** A, B ... Z, A1, B1 ... */
    private static String letter(int number) {
      char letter = (char) ('A' + number % 26);
      return number < 26 ? String.valueOf(letter) : letter + Integer.toString(number / 26);
    }

    private void placeFurnitureNames(List<Furniture> furniture) {
      double size = nameSize * 0.74;
      for (Furniture each : furniture) {
        Box bounds = bounds(frame.at(each.outline()));
        double width = Lettering.width(each.name(), size, false);
        boolean upright = width > bounds.width() - 4;
        double height = size * Words.LINE_HEIGHT;
        Box box =
            upright
                ? Box.around(bounds.centreX(), bounds.centreY(), height, width)
                : Box.around(bounds.centreX(), bounds.centreY(), width, height);
        if (bounds.grown(-1).holds(box) && obstacles.isFree(box)) {
          obstacles.take(box);
          words.add(
              new Words(
                  box, List.of(new Words.Line(each.name(), size, false, Ink.QUIET)), upright));
        }
      }
    }

    private static Box bounds(List<Spot> spots) {
      double left = spots.stream().mapToDouble(Spot::x).min().orElseThrow();
      double right = spots.stream().mapToDouble(Spot::x).max().orElseThrow();
      double top = spots.stream().mapToDouble(Spot::y).min().orElseThrow();
      double bottom = spots.stream().mapToDouble(Spot::y).max().orElseThrow();
      return new Box(left, top, right - left, bottom - top);
    }

    private void noteWhatIsMissing() {
      note(
          "Rooms without a drawing",
          floor.floor().rooms().stream()
              .map(Room::name)
              .filter(name -> floor.findRoom(name).isEmpty())
              .toList());
      note(
          "Openings without a place",
          floor.floor().openings().stream()
              .map(Opening::name)
              .filter(name -> floor.findOpening(name).isEmpty())
              .toList());
      boolean isFirst =
          building.floors().stream()
              .filter(each -> !each.rooms().isEmpty())
              .findFirst()
              .filter(floor::equals)
              .isPresent();
      if (isFirst) {
        note(
            "Zones on no floor",
            plan.zones().stream()
                .filter(zone -> !isPlaced(zone))
                .map(zone -> zone.number() + " " + zone.name())
                .toList());
      }
    }

    private boolean isPlaced(Zone zone) {
      return zone.devices().stream()
          .anyMatch(device ->
              device instanceof ZoneDevice.Fitted fitted
                  && building.findDevice(fitted.device().name()).isPresent());
    }

    private void note(String about, List<String> names) {
      if (names.isEmpty()) {
        return;
      }
      int shown = Math.min(names.size(), 12);
      String more = names.size() > shown ? " and " + (names.size() - shown) + " more" : "";
      notes.add(about + ": " + String.join("; ", names.subList(0, shown)) + more);
    }
  }

  /** Furniture that stands on the floor; the rest is noted. */
  List<Furniture> furniture(FloorGeometry floor) {
    return floor.floor().furniture().stream().filter(each -> isOn(frame, area, each)).toList();
  }

  private static boolean isOn(Frame frame, Box area, Furniture furniture) {
    return furniture.outline().size() >= 3
        && frame.at(furniture.outline()).stream()
            .allMatch(spot -> area.holds(new Box(spot.x(), spot.y(), 0, 0)));
  }
}
