package keenward.core.plan;

import java.util.ArrayList;
import java.util.List;
import keenward.core.quantities.Length;

/** Builds a floor of a test's plan; rooms are rectangles along the axes, lengths in metres. */
public final class FloorBuilder {
  private final String name;
  private final List<Room> rooms = new ArrayList<>();
  private final List<Opening> openings = new ArrayList<>();
  private final List<Furniture> furniture = new ArrayList<>();
  private final List<Stair> stairs = new ArrayList<>();
  private final List<Wall> walls = new ArrayList<>();
  private Fact<Material> wallMaterial = Fact.missing();
  private Fact<Length> height = Fact.missing();

  FloorBuilder(String name) {
    this.name = name;
  }

  public FloorBuilder room(
      String room, RoomUse use, double west, double south, double east, double north) {
    return room(
        room,
        use,
        List.of(
            new Point(west, south),
            new Point(east, south),
            new Point(east, north),
            new Point(west, north)));
  }

  /** A room without a drawing, or with an outline of any form. */
  public FloorBuilder room(String room, RoomUse use, List<Point> outline) {
    rooms.add(new Room(room, Fact.of(use), Fact.missing(), Fact.missing(), outline));
    return this;
  }

  /** Says that what a burglar wants is in a room. */
  public FloorBuilder target(String room) {
    rooms.replaceAll(each ->
        each.name().equals(room)
            ? new Room(room, each.use(), Fact.of(true), each.animals(), each.outline())
            : each);
    return this;
  }

  /** Says that a thing grows warm or moves air by itself. */
  public FloorBuilder warms(String thing) {
    furniture.replaceAll(each ->
        each.name().equals(thing)
            ? new Furniture(each.name(), each.outline(), each.height(), Fact.of(true))
            : each);
    return this;
  }

  /** Says that an animal moves about in a room. */
  public FloorBuilder animals(String room) {
    rooms.replaceAll(each ->
        each.name().equals(room)
            ? new Room(room, each.use(), each.target(), Fact.of(true), each.outline())
            : each);
    return this;
  }

  /** An opening between two rooms, or a room and outside, whose place on the wall is not stated. */
  public FloorBuilder opening(String opening, OpeningKind kind, String between, String and) {
    return opening(opening, kind, between, and, Fact.missing(), Fact.missing(), Fact.missing());
  }

  /** An opening on a stated edge, 0.5 m from its first corner. */
  public FloorBuilder opening(
      String opening, OpeningKind kind, String between, String and, int edge) {
    return opening(opening, kind, between, and, Fact.of(edge), Fact.missing(), Fact.missing());
  }

  public FloorBuilder excluded(String opening, OpeningKind kind, String between, String reason) {
    return opening(
        opening,
        kind,
        between,
        EdgeSelector.OUTSIDE,
        Fact.missing(),
        Fact.missing(),
        Fact.of(reason));
  }

  public FloorBuilder unreachable(String opening, OpeningKind kind, String between) {
    return opening(
        opening,
        kind,
        between,
        EdgeSelector.OUTSIDE,
        Fact.missing(),
        Fact.of(false),
        Fact.missing());
  }

  public FloorBuilder stair(String stair, String from, String to) {
    stairs.add(Stair.between(stair, from, to));
    return this;
  }

  public FloorBuilder stair(
      String stair, String from, String to, Point at, Point endsAt, String run) {
    stairs.add(
        new Stair(
            stair,
            from,
            to,
            Fact.of(at),
            Fact.of(endsAt),
            Fact.of(Quantities.of(Length.parse(run)))));
    return this;
  }

  /** A thing as high as stated, on a rectangle. */
  public FloorBuilder furniture(
      String thing, String height, double west, double south, double east, double north) {
    furniture.add(
        new Furniture(
            thing,
            List.of(
                new Point(west, south),
                new Point(east, south),
                new Point(east, north),
                new Point(west, north)),
            Fact.of(Quantities.of(Length.parse(height))),
            Fact.missing()));
    return this;
  }

  public FloorBuilder walls(Material material) {
    wallMaterial = Fact.of(material);
    return this;
  }

  public FloorBuilder high(String ceilingHeight) {
    height = Fact.of(Quantities.of(Length.parse(ceilingHeight)));
    return this;
  }

  /** A wall between two rooms that differs. */
  public FloorBuilder wall(String between, String and, Material material) {
    return wall(between, and, Fact.of(material), Fact.missing());
  }

  /** A wall between two rooms that does not reach the ceiling. */
  public FloorBuilder lowWall(String between, String and, String wallHeight) {
    return wall(between, and, Fact.missing(), Fact.of(Quantities.of(Length.parse(wallHeight))));
  }

  private FloorBuilder wall(
      String between, String and, Fact<Material> material, Fact<Length> wallHeight) {
    walls.add(new Wall(new EdgeSelector(between, and, Fact.missing()), material, wallHeight));
    return this;
  }

  private FloorBuilder opening(
      String opening,
      OpeningKind kind,
      String between,
      String and,
      Fact<Integer> edge,
      Fact<Boolean> reachable,
      Fact<String> excluded) {
    openings.add(
        new Opening(
            opening,
            kind,
            new EdgeSelector(between, and, edge),
            Fact.of(Quantities.of(Length.parse("0.5 m"))),
            Fact.of(Quantities.of(Length.parse("0.9 m"))),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            reachable,
            excluded,
            Fact.missing()));
    return this;
  }

  Floor build() {
    return new Floor(
        name,
        DrawingUnit.METRES,
        height,
        Fact.missing(),
        wallMaterial,
        rooms,
        walls,
        openings,
        furniture,
        stairs,
        Fact.missing());
  }
}
