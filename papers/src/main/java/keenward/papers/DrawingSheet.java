package keenward.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.drawing.floor.FloorDrawing;
import keenward.drawing.floor.FloorOptions;
import keenward.drawing.floor.SchematicDrawing;

/** Floors, one a page; a picture of boxes where the plan has no drawing. */
final class DrawingSheet {

  private static final String FACES = "'DejaVu Sans Condensed', 'DejaVu Sans', sans-serif";

  private DrawingSheet() {}

  static Sheet of(PapersInput input) {
    List<View> floors = new ArrayList<>();
    for (String floor : FloorDrawing.floors(input.building())) {
      FloorOptions options = options("floor" + floors.size() + "-");
      Optional<String> svg = FloorDrawing.svg(input.plan(), input.building(), floor, options);
      svg.ifPresent(
          text -> floors.add(new View().text("what", "").text("svg", Picture.fitted(text))));
    }
    // What is seen goes on pages of its own, so that the plan itself stays clear.
    for (String floor : FloorDrawing.floors(input.building())) {
      if (input.coverage().views().stream().anyMatch(view -> view.floor().equals(floor))) {
        FloorOptions options = options("seen" + floors.size() + "-").coverage(input.coverage());
        FloorDrawing.svg(input.plan(), input.building(), floor, options)
            .ifPresent(text ->
                floors.add(
                    new View()
                        .text("what", "What the motion detectors see: " + floor)
                        .text("svg", Picture.fitted(text))));
      }
    }
    View view = new View().views("floors", floors).text("schematic", "");
    if (floors.isEmpty()) {
      view.text(
          "schematic",
          Picture.fitted(
              SchematicDrawing.svg(input.plan(), input.building(), options("schematic-"))));
      view.views(
          "missing",
          List.of(
              Say.missing(
                  "what each detector sees and which openings nobody watches, since the plan has no drawing",
                  "floors: { Ground: { unit: m, rooms: { Hall: { outline: [[0, 0], [4, 0], [4, 3], [0, 3]] } } } }",
                  "floors")));
    } else {
      view.views("missing", List.of());
    }
    return Sheet.of("drawing", "Drawing", "technician and firm", view);
  }

  static FloorOptions options(String prefix) {
    return FloorOptions.paper().idPrefix(prefix).faces(FACES);
  }
}
