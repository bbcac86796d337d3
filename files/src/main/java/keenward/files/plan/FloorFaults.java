package keenward.files.plan;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import keenward.core.plan.EdgeSelector;
import keenward.core.quantities.Length;
import keenward.files.QuotedText;
import keenward.files.shape.Fields;
import keenward.files.yaml.Span;

/** Rooms that walls, openings and stairs name: on which floor they are. */
final class FloorFaults {

  private final PlanDraft draft;
  private final Map<String, String> floorOfRoom = new HashMap<>();

  private FloorFaults(PlanDraft draft) {
    this.draft = draft;
    draft
        .section(SitePlanShape.FLOORS)
        .forEach((floor, fields) ->
            fields
                .find(FloorSection.ROOMS)
                .orElseGet(Map::of)
                .keySet()
                .forEach(room -> floorOfRoom.put(room, floor)));
  }

  static void check(PlanDraft draft) {
    FloorFaults faults = new FloorFaults(draft);
    draft.section(SitePlanShape.FLOORS).forEach(faults::floor);
  }

  private void floor(String floor, Fields fields) {
    List<Fields> walls = fields.list(FloorSection.WALLS);
    walls.forEach(wall -> between(floor, wall));
    fields
        .find(FloorSection.OPENINGS)
        .orElseGet(Map::of)
        .values()
        .forEach(opening -> between(floor, opening));
    fields
        .find(FloorSection.STAIRS)
        .orElseGet(Map::of)
        .values()
        .forEach(stair -> stair(floor, stair));
    fields.find(FloorSection.BACKDROP).ifPresent(this::backdrop);
  }

  private void backdrop(Fields fields) {
    List<List<BigDecimal>> points = fields.list(BackdropSection.POINTS);
    // A point with a fault of its own has no coordinates, and has been reported.
    boolean isOnePlace =
        points.size() == 2
            && points.stream().allMatch(point -> point.size() == 2)
            && points.get(0).get(0).compareTo(points.get(1).get(0)) == 0
            && points.get(0).get(1).compareTo(points.get(1).get(1)) == 0;
    if (isOnePlace) {
      draft.fault(
          fields.place(BackdropSection.POINTS),
          "both points are the same place",
          "two places of the picture, far apart",
          "");
    }
    fields
        .fact(BackdropSection.DISTANCE)
        .map(Length::metres)
        .find()
        .filter(metres -> metres <= 0)
        .ifPresent(metres ->
            draft.fault(
                fields.place(BackdropSection.DISTANCE),
                "the two points are no distance apart",
                "a length above zero",
                "measure it in the building"));
    boolean isPdf =
        fields
            .find(BackdropSection.PICTURE)
            .filter(name -> !name.toLowerCase(Locale.ROOT).endsWith(".pdf"))
            .isEmpty();
    if (!isPdf && fields.mentions(BackdropSection.PAGE)) {
      draft.fault(
          fields.place(BackdropSection.PAGE),
          "a picture that is no PDF has no pages",
          "`page` with a .pdf file only",
          "take the line out");
    }
  }

  private void between(String floor, Fields fields) {
    List<String> rooms = fields.list(WallPlace.BETWEEN);
    Span place = fields.place(WallPlace.BETWEEN);
    rooms.forEach(room -> onFloor(floor, room, place));
    if (rooms.size() == 2 && rooms.get(0).equals(EdgeSelector.OUTSIDE)) {
      draft.fault(
          place,
          "outside comes first",
          "the room first, because its outline counts the edges",
          "write [" + rooms.get(1) + ", outside]");
    } else if (rooms.size() == 2 && rooms.get(0).equals(rooms.get(1))) {
      draft.fault(place, QuotedText.of(rooms.get(0)) + " on both sides", "two different rooms", "");
    }
  }

  private void stair(String floor, Fields fields) {
    fields
        .find(FloorSection.STAIR_ROOM)
        .ifPresent(room -> onFloor(floor, room, fields.place(FloorSection.STAIR_ROOM)));
    fields
        .find(FloorSection.STAIR_TO)
        .filter(room -> floor.equals(floorOfRoom.get(room)))
        .ifPresent(room ->
            draft.fault(
                fields.place(FloorSection.STAIR_TO),
                "the stair ends in " + QuotedText.of(room) + " on its own floor",
                "a room of another floor",
                ""));
  }

  private void onFloor(String floor, String room, Span place) {
    String actual = floorOfRoom.get(room);
    if (actual != null && !actual.equals(floor)) {
      draft.fault(
          place,
          QuotedText.of(room) + " is a room of the floor " + QuotedText.of(actual),
          "a room of the floor " + QuotedText.of(floor),
          "");
    }
  }
}
