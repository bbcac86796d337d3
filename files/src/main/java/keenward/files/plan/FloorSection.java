package keenward.files.plan;

import static keenward.files.shape.Field.optional;
import static keenward.files.shape.Field.required;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import keenward.core.plan.DrawingUnit;
import keenward.core.plan.EdgeSelector;
import keenward.core.plan.Fact;
import keenward.core.plan.Floor;
import keenward.core.plan.Furniture;
import keenward.core.plan.Material;
import keenward.core.plan.Room;
import keenward.core.plan.RoomUse;
import keenward.core.plan.Stair;
import keenward.core.plan.Wall;
import keenward.core.quantities.Length;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.shape.MapShape;
import keenward.files.shape.NameKey;
import keenward.files.shape.Shapes;

/** Floors with rooms, walls where they differ, openings, furniture and stairs. */
final class FloorSection {

  static final Field<Fact<RoomUse>> USE =
      optional("use", Shapes.word(RoomUse.class).orUnknown(), "workshop", "What it is used for.");
  static final Field<List<List<BigDecimal>>> ROOM_OUTLINE =
      optional(
              "outline",
              Common.outline(),
              "[[0, 0], [6, 0], [6, 5], [0, 5]]",
              "Corners in order, not closed: x to the right, y up, in the floor's unit. Edges that two rooms share are"
                  + " inner walls; all others are outer walls. Edge 1 runs from the first corner to the second.")
          .usual("not drawn");
  static final Field<Fact<Boolean>> TARGET =
      optional(
              "target",
              Common.yesNo(),
              "yes",
              "Whether what a burglar wants is there: a safe, drugs, the till.")
          .usual("no");
  static final Field<Fact<Boolean>> ANIMALS =
      optional(
              "animals",
              Common.yesNo(),
              "yes",
              "Whether an animal moves about in it while the system is armed.")
          .usual("no");
  static final MapShape ROOM = MapShape.of("room", "A room.", USE, TARGET, ANIMALS, ROOM_OUTLINE);

  static final Field<Fact<Material>> WALL_MATERIAL =
      optional(
          "material",
          Shapes.word(Material.class).orUnknown(),
          "plasterboard",
          "What it is made of.");
  static final Field<Fact<Length>> WALL_HEIGHT =
      optional(
              "height", Common.length(), "2.4 m", "Its height, when it does not reach the ceiling.")
          .usual("up to the ceiling");
  static final MapShape WALL =
      MapShape.of(
          "wall",
          "A wall that differs.",
          WallPlace.BETWEEN,
          WallPlace.EDGE,
          WALL_MATERIAL,
          WALL_HEIGHT);

  static final Field<List<List<BigDecimal>>> FURNITURE_OUTLINE =
      required(
          "outline",
          Common.outline(),
          "[[1, 2], [3, 2], [3, 2.6], [1, 2.6]]",
          "Corners in order, not closed, in the floor's unit.");
  static final Field<Fact<Length>> FURNITURE_HEIGHT =
      optional("height", Common.length(), "1.1 m", "Its height.");
  static final Field<Fact<Boolean>> WARMS =
      optional(
              "warms",
              Common.yesNo(),
              "yes",
              "Whether it grows warm or moves air by itself: a heater, an oven, a boiler, a fan.")
          .usual("no");
  static final MapShape FURNITURE =
      MapShape.of(
          "piece of furniture",
          "Something in the way of a walker or a detector.",
          FURNITURE_OUTLINE,
          FURNITURE_HEIGHT,
          WARMS);

  static final Field<String> STAIR_ROOM =
      required("room", Common.room(), "Workshop", "Room of this floor in which it starts.");
  static final Field<String> STAIR_TO =
      required("to", Common.room(), "Landing", "Room of another floor in which it ends.");
  static final Field<Fact<List<BigDecimal>>> STAIR_AT =
      optional(
          "at",
          Common.coordinates().orUnknown(),
          "[10.2, 1]",
          "Where its first step is, in this floor's unit; walking times need it.");
  static final Field<Fact<List<BigDecimal>>> STAIR_ENDS_AT =
      optional(
          "ends at",
          Common.coordinates().orUnknown(),
          "[10.2, 4]",
          "Where its last step is on the other floor, in the unit of this floor.");
  static final Field<Fact<Length>> STAIR_RUN =
      optional(
          "run",
          Common.length(),
          "3.6 m",
          "How far one walks on it, measured level: treads and landings, not the slope.");
  static final MapShape STAIR =
      MapShape.of(
          "stair",
          "A stair; it is drawn on both floors.",
          STAIR_ROOM,
          STAIR_TO,
          STAIR_AT,
          STAIR_ENDS_AT,
          STAIR_RUN);

  static final Field<DrawingUnit> UNIT =
      optional("unit", Shapes.word(DrawingUnit.class), "ft", "Unit of plain coordinates.")
          .usual("`m`");
  static final Field<Fact<Length>> HEIGHT =
      optional("height", Common.length(), "2.7 m", "Floor to ceiling.");
  static final Field<Fact<Length>> SNAP =
      optional(
              "snap",
              Common.length(),
              "0.05 m",
              "Rooms whose edges lie closer than this share a wall.")
          .usual(Floor.USUAL_SNAP_METRES + " m");
  static final Field<Fact<Material>> USUAL_WALL =
      optional(
          "wall material",
          Shapes.word(Material.class).orUnknown(),
          "brick",
          "What walls are made of where nothing else is said.");
  static final Field<Map<String, Fields>> ROOMS =
      optional(
          "rooms",
          Shapes.names(NameKey.name("a room", EdgeSelector.OUTSIDE), ROOM),
          "",
          "Rooms by name; a name occurs once in the whole plan.");
  static final Field<List<Fields>> WALLS =
      optional("walls", Shapes.list(WALL), "", "Walls that differ from the floor's usual ones.")
          .usual("none");
  static final Field<Map<String, Fields>> OPENINGS =
      optional(
          "openings",
          Shapes.names(NameKey.name("an opening"), OpeningSection.SHAPE),
          "",
          "Doors, windows and the like by name; a name occurs once in the whole plan.");
  static final Field<Map<String, Fields>> FURNITURE_PIECES =
      optional(
              "furniture",
              Shapes.names(NameKey.name("a piece of furniture"), FURNITURE),
              "",
              "Things in the way.")
          .usual("none");
  static final Field<Map<String, Fields>> STAIRS =
      optional(
              "stairs", Shapes.names(NameKey.name("a stair"), STAIR), "", "Stairs that start here.")
          .usual("none");
  static final Field<Fields> BACKDROP =
      optional("backdrop", BackdropSection.SHAPE, "", "A picture to trace its rooms over.")
          .usual("none");

  static final MapShape SHAPE =
      MapShape.of(
              "floor",
              "One floor, lowest first. Rooms make the walls; openings sit on a wall and so cannot float.",
              UNIT,
              HEIGHT,
              SNAP,
              USUAL_WALL,
              ROOMS,
              WALLS,
              OPENINGS,
              FURNITURE_PIECES,
              STAIRS,
              BACKDROP)
          .example(
              """
              floors:
                Ground:
                  unit: m
                  height: 2.7 m
                  wall material: brick
                  rooms:
                    Shop: { use: shop, outline: [[0, 0], [6, 0], [6, 5], [0, 5]] }
                    Workshop: { use: workshop, outline: [[6, 0], [11, 0], [11, 5], [6, 5]] }
                  walls:
                    - { between: [Shop, Workshop], material: plasterboard, height: 2.4 m }
                  openings:
                    Shop door: { kind: door, between: [Shop, outside], edge: 1, at: 1.2 m, width: 0.9 m, hinge: left, opens: in }
                    Way through: { kind: doorway, between: [Shop, Workshop], at: 2 m, width: 0.9 m }
                  furniture:
                    Counter: { outline: [[1, 2], [3, 2], [3, 2.6], [1, 2.6]], height: 1.1 m }
                  stairs:
                    Back stair: { room: Workshop, to: Landing, at: [10.2, 1], ends at: [10.2, 4], run: 3.6 m }
                Upper:
                  rooms:
                    Landing: { use: landing }
              """);

  private FloorSection() {}

  static Floor bind(String name, Fields fields) {
    DrawingUnit unit = fields.find(UNIT).orElse(DrawingUnit.METRES);
    return new Floor(
        name,
        unit,
        fields.fact(HEIGHT),
        fields.fact(SNAP),
        fields.fact(USUAL_WALL),
        entries(fields, ROOMS).map(entry -> room(entry.getKey(), entry.getValue(), unit)).toList(),
        fields.list(WALLS).stream().map(FloorSection::wall).toList(),
        entries(fields, OPENINGS)
            .map(entry -> OpeningSection.bind(entry.getKey(), entry.getValue()))
            .toList(),
        entries(fields, FURNITURE_PIECES)
            .map(entry -> furniture(entry.getKey(), entry.getValue(), unit))
            .toList(),
        entries(fields, STAIRS)
            .map(entry -> stair(entry.getKey(), entry.getValue(), unit))
            .toList(),
        fields
            .find(BACKDROP)
            .map(backdrop -> Fact.of(BackdropSection.bind(backdrop, unit)))
            .orElse(Fact.missing()));
  }

  private static Stream<Map.Entry<String, Fields>> entries(
      Fields fields, Field<Map<String, Fields>> field) {
    return fields.find(field).orElse(Map.of()).entrySet().stream();
  }

  private static Room room(String name, Fields fields, DrawingUnit unit) {
    return new Room(
        name,
        fields.fact(USE),
        fields.fact(TARGET),
        fields.fact(ANIMALS),
        Common.points(fields.list(ROOM_OUTLINE), unit));
  }

  private static Wall wall(Fields fields) {
    return new Wall(WallPlace.bind(fields), fields.fact(WALL_MATERIAL), fields.fact(WALL_HEIGHT));
  }

  private static Furniture furniture(String name, Fields fields, DrawingUnit unit) {
    return new Furniture(
        name,
        Common.points(fields.get(FURNITURE_OUTLINE), unit),
        fields.fact(FURNITURE_HEIGHT),
        fields.fact(WARMS));
  }

  private static Stair stair(String name, Fields fields, DrawingUnit unit) {
    return new Stair(
        name,
        fields.get(STAIR_ROOM),
        fields.get(STAIR_TO),
        fields.fact(STAIR_AT).map(coordinates -> Common.point(coordinates, unit)),
        fields.fact(STAIR_ENDS_AT).map(coordinates -> Common.point(coordinates, unit)),
        fields.fact(STAIR_RUN));
  }
}
