package keenward.core.rules.power;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import keenward.core.electrical.outage.OwnCells;
import keenward.core.plan.PlanPath;
import keenward.core.rules.Age;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;

/** The cell of a device comes to its end before the next visit. */
public final class CellDueBeforeVisit implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.POWER, 15, "cell-due-before-visit", Severity.WARNING)
          .source(Source.practice())
          .source(
              Source.memory(
                  "EN 50131-5-3",
                  "",
                  "radio devices signal a low cell; planned replacement is left to service"))
          .purpose(
              "Adds the life of each cell to the day of fitting, and looks whether that day comes before the next visit.")
          .consequence(
              "Low-battery signals at night, an extra journey, or a sensor that is simply gone.")
          .limits(
              "A cell that is past its day already is REC-02. Without a day to judge on, or without the service interval, not assessed.")
          .remedy("Change the cell on this visit, and enter the new date as `fitted:`.")
          .broken(
              """
              keenward: 1
              site: Example
              devices:
                Shop door: { kind: contact, wiring: radio, serial: "1", cell life: 4 y, fitted: 2023-03-01 }
              service: { installed: 2022-03-01, last visit: 2026-10-02, every: 12 months }
              zones:
                1: { name: Front door, response: entry-exit, device: Shop door }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              devices:
                Shop door: { kind: contact, wiring: radio, serial: "1", cell life: 4 y, fitted: 2026-10-02 }
              service: { installed: 2022-03-01, last visit: 2026-10-02, every: 12 months }
              zones:
                1: { name: Front door, response: entry-exit, device: Shop door }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              devices:
                Shop door: { kind: contact, wiring: radio, serial: "1", cell life: 4 y, fitted: 2023-11-01 }
              service: { installed: 2022-03-01, last visit: 2026-10-02, every: 12 months }
              zones:
                1: { name: Front door, response: entry-exit, device: Shop door }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    OwnCells cells = OwnCells.of(input.plan());
    if (cells.cells().isEmpty()) {
      return;
    }
    Optional<LocalDate> day = input.asOf();
    if (day.isEmpty()) {
      Age.dayMissing(PlanPath.of("devices"), "which cells are due", report);
      return;
    }
    if (cells.nextVisit().isEmpty()) {
      report.notAssessed(
          PlanPath.of("service"),
          "which cells are due before the next visit, since the plan does not say when that is",
          "service: { last visit: YYYY-MM-DD, every: 12 months }");
      return;
    }
    report.judged();
    for (OwnCells.Cell cell : cells.dueBeforeNextVisit(day.get())) {
      report.found(
          PlanPath.of("devices", cell.device(), "fitted"),
          "The cell of '"
              + cell.device()
              + "' was fitted on "
              + cell.fitted()
              + " for "
              + cell.life().written()
              + ", to "
              + cell.due()
              + "; the next visit is on "
              + cells.nextVisit().orElseThrow()
              + ".",
          "Change the cell of '" + cell.device() + "' on this visit.",
          Involved.devices(List.of(cell.device())));
    }
  }
}
