package keenward.cli.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import keenward.core.building.placing.KeypadPlacer;
import keenward.core.building.placing.Placement;
import keenward.core.building.placing.Suggestion;
import keenward.usecases.suggest.SiteSuggestion;

/** Where detectors and keypads could go. */
public final class SuggestionText {

  private SuggestionText() {}

  /** The whole page. */
  public static String of(SiteSuggestion suggested) {
    Page page = new Page();
    page.heading("Suggestion: " + suggested.site().plan().site().name());
    page.line("A starting point: sun, heat, drafts, pets and what is fitted there decide on site.");
    Suggestion detectors = suggested.detectors();
    page.heading("Motion detectors");
    page.line(
        detectors.placements().size()
            + (detectors.wish().isAfresh()
                ? ""
                : " beside the " + detectors.kept() + " of the plan that count")
            + "; no fewer than "
            + detectors.atLeast()
            + " will do at the places looked at (gap "
            + detectors.gap()
            + ").");
    List<List<String>> rows = new ArrayList<>();
    for (Placement placement : detectors.placements()) {
      rows.add(
          List.of(
              placement.device().name(), placement.candidate().type().name(), placement.reason()));
    }
    if (!rows.isEmpty()) {
      page.table(rows);
      page.heading("Lines for `devices:` of the plan");
      suggested.planLines().forEach(line -> page.line("  " + line));
    }
    if (!detectors.rooms().isEmpty()) {
      page.heading(
          "Seen"
              + (detectors.wish().times() > 1 ? " twice" : "")
              + ", of "
              + CoverageText.percent(detectors.wish().share())
              + " wanted");
      List<List<String>> rooms = new ArrayList<>();
      for (Suggestion.RoomResult room : detectors.rooms()) {
        rooms.add(
            List.of(
                room.room(),
                CoverageText.percent(room.before()),
                "to " + CoverageText.percent(room.after()),
                room.isOutOfReach(detectors.wish())
                    ? "no more than " + CoverageText.percent(room.most()) + " at any places"
                    : room.isShort(detectors.wish()) ? "short of the wish" : ""));
      }
      page.table(rooms);
    }
    keypads(suggested, page);
    if (!detectors.notAssessed().isEmpty()) {
      page.heading("Not assessed");
      detectors
          .notAssessed()
          .forEach(open ->
              page.hanging("  ", 4, suggested.site().place(open.place()) + " " + open.message()));
    }
    return page.toString();
  }

  private static void keypads(SiteSuggestion suggested, Page page) {
    if (suggested.keypads().places().isEmpty() && suggested.keypads().none().isEmpty()) {
      return;
    }
    page.heading("Keypads: the place of least delay");
    for (KeypadPlacer.KeypadPlace place : suggested.keypads().places()) {
      page.hanging(
          "  ",
          4,
          place.partition()
              + ": '"
              + place.room()
              + "' at "
              + metres(place.at().xMetres())
              + ", "
              + metres(place.at().yMetres())
              + " m; 95 of 100 slow people need up to "
              + place.seconds().entrySet().stream()
                  .map(door -> (int) Math.ceil(door.getValue()) + " s from '" + door.getKey() + "'")
                  .collect(Collectors.joining(", "))
              + place
                  .nowSeconds()
                  .map(now -> "; to the keypads of the plan up to " + (int) Math.ceil(now) + " s.")
                  .orElse("."));
    }
    for (String partition : suggested.keypads().none()) {
      page.hanging(
          "  ", 4, partition + ": none, since every walk leads past a zone that alarms at once.");
    }
  }

  private static String metres(double value) {
    return BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP).toPlainString();
  }
}
