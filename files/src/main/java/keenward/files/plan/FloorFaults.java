package keenward.files.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import keenward.core.plan.EdgeSelector;
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
