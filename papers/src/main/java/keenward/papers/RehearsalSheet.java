package keenward.papers;

import java.util.ArrayList;
import java.util.List;
import keenward.drawing.svg.Palette;
import keenward.drawing.timeline.TimelineDrawing;
import keenward.drawing.timeline.TimelineOptions;
import keenward.drawing.timeline.TimelineRow;

/** What the planned system did in the rehearsed scenarios; the first is drawn. */
final class RehearsalSheet {

  private static final String FACES = "'DejaVu Sans Condensed', 'DejaVu Sans', sans-serif";

  private RehearsalSheet() {}

  static Sheet of(PapersInput input) {
    List<View> scenarios = new ArrayList<>();
    for (Rehearsed rehearsed : input.rehearsals()) {
      scenarios.add(
          new View()
              .text("name", rehearsed.name())
              .text("reason", rehearsed.reason())
              .text("size", Say.count(rehearsed.rows().size(), "event", "events"))
              .flag("met", rehearsed.unmet().isEmpty())
              .texts("unmet", rehearsed.unmet()));
    }
    List<View> pictures = new ArrayList<>();
    boolean empty = input.rehearsals().isEmpty();
    if (!empty) {
      Rehearsed first = input.rehearsals().getFirst();
      draw(pictures, first.name(), first.rows());
    }
    View view =
        new View()
            .views("scenarios", scenarios)
            .text("first", empty ? "" : input.rehearsals().getFirst().name())
            .views("pictures", pictures)
            .views(
                "missing",
                empty
                    ? List.of(
                        Say.missing(
                            "what the system does on a usual day, since nothing was rehearsed",
                            "people: { Ines: { habits: { comes home: { does: disarm, at: \"18:00\", through: Front door, keypad: Hall keypad } } } }",
                            "people"))
                    : List.of());
    return Sheet.of("rehearsal", "Rehearsal", "technician and owner", view);
  }

  /** A picture that is higher than a sheet is cut into halves until each fits. */
  private static void draw(List<View> pictures, String name, List<TimelineRow> rows) {
    TimelineOptions options =
        new TimelineOptions(
            pictures.isEmpty() ? name : name + ", continued",
            680,
            Palette.PRINT,
            "timeline" + pictures.size() + "-",
            FACES);
    String svg = TimelineDrawing.svg(rows, options);
    if (Picture.height(svg) > Picture.MOST_HEIGHT && rows.size() > 1) {
      int half = rows.size() / 2;
      draw(pictures, name, rows.subList(0, half));
      draw(pictures, name, rows.subList(half, rows.size()));
    } else {
      pictures.add(new View().text("svg", Picture.fitted(svg)));
    }
  }
}
