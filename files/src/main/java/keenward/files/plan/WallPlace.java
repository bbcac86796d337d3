package keenward.files.plan;

import static keenward.files.shape.Field.optional;
import static keenward.files.shape.Field.required;

import java.util.List;
import keenward.core.plan.EdgeSelector;
import keenward.core.plan.Fact;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.shape.Shapes;

/** Which wall: between two rooms, or a room and outside. */
final class WallPlace {

  static final Field<List<String>> BETWEEN =
      required(
          "between",
          Shapes.list(Common.room().orWords(List.of(EdgeSelector.OUTSIDE))).of(2, 2),
          "[Shop, outside]",
          "The two rooms that the wall divides, or a room and `outside`; the room whose outline is walked comes first.");
  static final Field<Fact<Integer>> EDGE =
      optional(
              "edge",
              Shapes.wholeNumber(1, 500).orUnknown(),
              "1",
              "Which of their shared walls, counted from 1 along the first room's outline.")
          .usual("the only one");

  private WallPlace() {}

  static EdgeSelector bind(Fields fields) {
    List<String> between = fields.get(BETWEEN);
    return new EdgeSelector(between.get(0), between.get(1), fields.fact(EDGE));
  }
}
