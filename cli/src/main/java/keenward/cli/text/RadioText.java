package keenward.cli.text;

import java.util.ArrayList;
import java.util.List;
import keenward.core.electrical.Figures;
import keenward.core.plan.MissingFact;
import keenward.core.radio.RadioAssessment;
import keenward.core.radio.RadioLink;
import keenward.core.radio.RadioMap;
import keenward.core.radio.RadioRoute;
import keenward.core.radio.RadioWords;
import keenward.core.radio.Supervision;
import keenward.usecases.radio.SiteRadio;

/** How radio devices are heard, every sum line by line. */
public final class RadioText {

  private RadioText() {}

  /** The whole page. */
  public static String of(SiteRadio site) {
    RadioAssessment radio = site.assessment();
    Page page = new Page();
    page.heading("Radio: " + site.site().plan().site().name());
    if (!radio.isNeeded()) {
      page.line("The plan has no fixed radio device.");
      return page.toString();
    }
    if (!radio.routes().isEmpty()) {
      page.paragraph(2, RadioWords.fit(radio)).gap();
      List<List<String>> rows = new ArrayList<>();
      rows.add(List.of("device", "heard by", "reckoned", "measured", "margin", ""));
      radio.routes().forEach(route -> rows.add(row(route)));
      page.table(rows);
    }
    places(page, site);
    for (RadioRoute route : radio.routes()) {
      page.heading(route.sender().name());
      for (RadioLink link : route.links()) {
        if (route.repeaters() > 0) {
          page.line("  From '" + link.sender().name() + "' to '" + link.listener().name() + "'");
        }
        link.lines().forEach(line -> page.hanging("  ", 6, line.text()));
      }
      radio.supervised().stream()
          .filter(each -> each.device().equals(route.sender()))
          .findFirst()
          .ifPresent((Supervision each) ->
              each.lines(route.links().getFirst().path().megahertz())
                  .forEach(line -> page.hanging("  ", 6, line.text())));
    }
    if (!radio.notAssessed().isEmpty()) {
      page.heading("Not assessed");
      for (MissingFact open : radio.notAssessed()) {
        page.hanging("  ", 4, site.site().place(open.place()) + " " + open.message());
      }
    }
    page.gap().paragraph(0, RadioWords.CAUTION);
    return page.toString();
  }

  private static List<String> row(RadioRoute route) {
    RadioLink first = route.links().getFirst();
    return List.of(
        route.sender().name(),
        RadioWords.heardBy(route),
        decibels(first.level()) + " dBm",
        first.measured().map(level -> decibels(level) + " dBm").orElse("-"),
        decibels(route.marginDecibels()) + " dB",
        RadioWords.verdict(route));
  }

  private static void places(Page page, SiteRadio site) {
    if (site.bestReceiver().isPresent() || site.bestRepeater().isPresent()) {
      page.gap();
    }
    site.bestReceiver()
        .ifPresent((RadioMap.BestPlace place) ->
            page.paragraph(2, RadioWords.bestReceiver(site.assessment(), place)));
    site.bestRepeater()
        .ifPresent((RadioMap.BestPlace place) -> page.paragraph(2, RadioWords.bestRepeater(place)));
  }

  private static String decibels(double value) {
    return Figures.text(value, "dB");
  }
}
