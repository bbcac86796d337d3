package keenward.cli.text;

import java.util.ArrayList;
import java.util.List;
import keenward.core.electrical.BatteryNeed;
import keenward.core.electrical.CableRun;
import keenward.core.electrical.Explained;
import keenward.core.electrical.Figures;
import keenward.core.electrical.LoadLine;
import keenward.core.electrical.PowerAssessment;
import keenward.core.electrical.PowerBudget;
import keenward.core.electrical.outage.Outage;
import keenward.core.electrical.outage.OutageEvent;
import keenward.core.electrical.outage.Outages;
import keenward.core.electrical.outage.OwnCells;
import keenward.core.plan.Fact;
import keenward.core.plan.MissingFact;
import keenward.core.quantities.Current;
import keenward.usecases.site.SiteFile;

/** Sums of supplies, batteries and cables, every line shown. */
public final class PowerText {

  private PowerText() {}

  /** The whole page. */
  public static String of(SiteFile site, PowerAssessment power, Outages outages) {
    Page page = new Page();
    for (PowerBudget budget : power.supplies()) {
      page.heading(site.plan().site().name() + ": supply " + budget.supply().name());
      List<List<String>> loads = new ArrayList<>();
      loads.add(List.of("draws", "at rest", "in alarm"));
      for (LoadLine line : budget.loads().lines()) {
        loads.add(List.of(line.name(), current(line.standby()), current(line.alarm())));
      }
      page.table(loads).gap();
      add(page, budget.standby());
      add(page, budget.alarm());
      for (BatteryNeed need : budget.needs()) {
        page.gap().paragraph(2, "Duty: " + need.duty().words());
        need.lines().forEach(line -> add(page, line));
      }
      page.gap();
      budget.fitted().ifPresent(line -> add(page, line));
      budget.margin().ifPresent(line -> add(page, line));
      budget.choice().ifPresent(choice -> page.paragraph(2, "Next usual size: " + choice.words()));
      budget
          .recharge()
          .ifPresent(recharge -> {
            add(page, recharge.hours());
            page.hanging("  ", 6, "Charge comes back: " + recharge.curveWords());
          });
      budget
          .output()
          .ifPresent(output -> {
            add(page, output.atRest());
            add(page, output.inAlarm());
          });
      budget.information().forEach(line -> add(page, line));
      budget.notAssessed().forEach(open -> add(page, open));
      outages.of(budget.supply().name()).ifPresent(outage -> outage(page, outage));
    }
    outages.notAssessed().forEach(open -> add(page, open));
    cells(page, OwnCells.of(site.plan()));
    if (!power.cableRuns().isEmpty()) {
      page.heading("Voltage at the far end of each known cable");
      List<List<String>> runs = new ArrayList<>();
      for (CableRun run : power.cableRuns()) {
        runs.add(
            List.of(
                run.device().name(),
                Figures.text(run.volts().value()) + " V",
                "over " + String.join(", ", run.cables())));
      }
      page.table(runs);
    }
    power.notAssessed().forEach(open -> add(page, open));
    page.gap()
        .paragraph(
            0,
            "Mains work and battery work can hurt: follow local code; licensed people only where it says so.");
    return page.toString();
  }

  private static void outage(Page page, Outage outage) {
    page.heading(outage.supply() + " in a long mains failure");
    add(page, outage.available());
    add(page, outage.cutOff());
    page.gap();
    for (OutageEvent event : outage.events()) {
      String working = event.line().working();
      page.hanging(
          "  ",
          6,
          event.when()
              + ": "
              + event.line().name()
              + (working.isEmpty() ? "" : " (" + working + ")"));
    }
    page.gap();
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("after", "left", "battery", "taken out"));
    for (Outage.Moment row : outage.hourly()) {
      rows.add(
          List.of(
              OutageEvent.time(row.hours()),
              row.percentInPrint(),
              row.voltsInPrint(),
              row.ampereHoursInPrint()));
    }
    page.table(rows);
  }

  private static void cells(Page page, OwnCells cells) {
    if (cells.cells().isEmpty() && cells.notAssessed().isEmpty()) {
      return;
    }
    page.heading("Cells of devices");
    cells.nextVisit().ifPresent(day -> page.paragraph(2, "Next visit: " + day));
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("device", "fitted", "lasts", "due"));
    for (OwnCells.Cell cell : cells.cells()) {
      rows.add(
          List.of(
              cell.device(),
              cell.fitted().toString(),
              cell.life().written(),
              cell.due().toString()));
    }
    page.table(rows);
    cells.notAssessed().forEach(open -> add(page, open));
  }

  private static void add(Page page, Explained line) {
    page.hanging("  ", 6, line.text());
  }

  private static void add(Page page, MissingFact open) {
    page.hanging("  ", 6, open.message());
  }

  private static String current(Fact<Current> fact) {
    return fact.map(Current::written).orElse("not known");
  }
}
