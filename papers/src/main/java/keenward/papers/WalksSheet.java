package keenward.papers;

import java.util.ArrayList;
import java.util.List;
import keenward.core.building.walking.Gait;
import keenward.core.building.walking.SiteWalk;
import keenward.core.plan.Settings;
import keenward.drawing.floor.FloorDrawing;

/** The walks that delays depend on: timed, with who sees the walker, and drawn. */
final class WalksSheet {

  private WalksSheet() {}

  static Sheet of(PapersInput input) {
    List<View> rows = new ArrayList<>();
    List<SiteWalk> walks = input.walks().walks();
    for (int i = 0; i < walks.size(); i++) {
      rows.add(row(i + 1, walks.get(i)));
    }
    List<View> floors = new ArrayList<>();
    for (String floor : FloorDrawing.floors(input.building())) {
      if (walks.stream().anyMatch(walk -> walk.time().route().isOn(floor))) {
        FloorDrawing.svg(
                input.plan(),
                input.building(),
                floor,
                DrawingSheet.options("walks" + floors.size() + "-").walks(walks))
            .ifPresent(svg -> floors.add(new View().text("svg", Picture.fitted(svg))));
      }
    }
    View view =
        new View()
            .views("walks", rows)
            .views("floors", floors)
            .texts("blocked", input.walks().blocked())
            .views(
                "missing",
                input.walks().notAssessed().stream()
                    .map(open ->
                        Say.missing(
                            open.why(), open.lineToAdd(), input.places().apply(open.place())))
                    .toList());
    return Sheet.of("walks", "Walking times", "technician and firm", view);
  }

  private static View row(int number, SiteWalk walk) {
    return new View()
        .number("number", number)
        .text("walk", walk.title())
        .text("from", walk.from())
        .text("to", walk.to())
        .text("metres", walk.time().route().metresInWords())
        .text("pace", walk.time().pace().word())
        .number("half", walk.wholeSeconds(Gait.Share.HALF))
        .number("most", walk.wholeSeconds(Gait.Share.MOST))
        .number("nearly-all", walk.wholeSeconds(Gait.Share.NEARLY_ALL))
        .text("delay", walk.delay().map(Settings.Resolved::words).orElse(Say.NOTHING))
        .flag("short", walk.isShort())
        .text(
            "seen",
            Say.list(
                walk.seenBy().stream()
                    .map(each -> each.zone().number() + " " + each.zone().name())
                    .toList()));
  }
}
