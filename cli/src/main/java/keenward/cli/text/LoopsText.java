package keenward.cli.text;

import static keenward.core.electrical.loop.FaultFinder.ohms;

import java.util.ArrayList;
import java.util.List;
import keenward.core.electrical.loop.Diagnosis;
import keenward.core.electrical.loop.Loop;
import keenward.core.electrical.loop.LoopAssessment;
import keenward.core.electrical.loop.LoopCheck;
import keenward.core.plan.MissingFact;
import keenward.usecases.loops.LoopReading;
import keenward.usecases.site.SiteFile;

/** What the panel reads of loops, and what readings mean. */
public final class LoopsText {

  private static final String CAUTION =
      "Measured with both cores off the panel and the loop without voltage. A loop of a fire or hold-up zone that"
          + " is taken off raises a signal: put the account on test first.";

  private LoopsText() {}

  /** Every loop. */
  public static String of(SiteFile site, LoopAssessment loops) {
    Page page = new Page();
    page.heading("Loops: " + site.plan().site().name());
    if (loops.loops().isEmpty()) {
      page.line("No zone says enough of its loop: wiring, resistors, contact.");
    }
    for (List<LoopAssessment.Assessed> alike : loops.alike()) {
      Loop first = alike.getFirst().loop();
      List<String> zones =
          alike.stream()
              .map(each -> each.loop().zone().number() + " " + each.loop().zone().name())
              .toList();
      page.gap().line(first.circuit());
      page.hanging("  ", 4, (zones.size() == 1 ? "zone " : "zones ") + String.join(", ", zones));
      states(page, first);
      alike.getFirst().check().ifPresent(check -> check(page, first, check));
    }
    if (!loops.notAssessed().isEmpty()) {
      page.heading("Not assessed");
      for (MissingFact open : loops.notAssessed()) {
        page.hanging("  ", 4, site.place(open.place()) + " " + open.message());
      }
    }
    return page.toString();
  }

  /** What one reading may mean. */
  public static String of(SiteFile site, LoopReading reading) {
    Page page = new Page();
    page.heading(title(reading.loop()) + ": " + ohms(reading.measuredOhms()) + " measured");
    if (reading.diagnoses().isEmpty()) {
      page.line("Nothing that is looked for gives this reading: measure again, then in parts.");
    }
    for (Diagnosis diagnosis : reading.diagnoses()) {
      page.hanging("  " + diagnosis.rank() + ". ", 5, diagnosis.what());
      page.hanging("     ", 7, diagnosis.working());
    }
    page.gap();
    states(page, reading.loop());
    page.gap().paragraph(0, CAUTION);
    return page.toString();
  }

  private static String title(Loop loop) {
    return "Zone " + loop.zone().number() + " " + loop.zone().name() + ", " + loop.circuit();
  }

  private static void states(Page page, Loop loop) {
    List<List<String>> rows = new ArrayList<>();
    loop.bands()
        .forEach((state, band) ->
            rows.add(List.of(state.words(), ohms(band.nominalOhms()), band.corners())));
    page.table(rows);
  }

  private static void check(Page page, Loop loop, LoopCheck check) {
    for (LoopCheck.Step step : check.steps()) {
      page.hanging(step.holds() ? "  " : "  ! ", 4, step.words());
    }
    check
        .longestMetres()
        .filter(metres -> loop.cable().isPresent())
        .ifPresent(metres ->
            page.line(
                "  Told apart up to " + Math.round(Math.floor(metres)) + " m of this cable."));
  }
}
