package keenward.files.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import keenward.files.QuotedText;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;
import keenward.files.yaml.Span;

/** Names that have to differ from each other although they stand in different maps. */
final class UniqueNames {

  private UniqueNames() {}

  static void check(PlanDraft draft) {
    for (Field<Map<String, Fields>> part :
        List.of(
            FloorSection.ROOMS,
            FloorSection.OPENINGS,
            FloorSection.FURNITURE_PIECES,
            FloorSection.STAIRS)) {
      Map<String, Span> seen = new HashMap<>();
      draft
          .section(SitePlanShape.FLOORS)
          .forEach((floor, fields) ->
              fields
                  .find(part)
                  .orElseGet(Map::of)
                  .keySet()
                  .forEach(name ->
                      add(draft, seen, name, draft.key("floors", floor, part.name(), name))));
    }
    Map<String, Span> ends = new HashMap<>();
    for (Field<Map<String, Fields>> section :
        List.of(SitePlanShape.DEVICES, SitePlanShape.SUPPLIES, SitePlanShape.JUNCTIONS)) {
      for (String name : draft.section(section).keySet()) {
        add(draft, ends, name, draft.key(section.name(), name));
      }
    }
  }

  private static void add(PlanDraft draft, Map<String, Span> seen, String name, Span place) {
    Span first = seen.putIfAbsent(name, place);
    if (first != null) {
      draft.fault(
          place,
          "the name " + QuotedText.of(name) + " is taken (line " + first.line() + ")",
          "a name of its own",
          "rename one of the two");
    }
  }
}
