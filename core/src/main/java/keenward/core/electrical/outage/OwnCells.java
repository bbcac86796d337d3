package keenward.core.electrical.outage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import keenward.core.plan.Device;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Service;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Wiring;
import keenward.core.quantities.Period;

/**
 * When the cells of devices are to be changed.
 *
 * @param nextVisit the next visit: the last one, or the installation, and the interval; empty where
 *     the plan does not say both
 * @param cells one for each device whose cell life and day of fitting are given, the first due
 *     first
 * @param notAssessed radio devices of which they are not
 */
public record OwnCells(
    Optional<LocalDate> nextVisit, List<Cell> cells, List<MissingFact> notAssessed) {

  /** Copies the lists. */
  public OwnCells {
    cells = List.copyOf(cells);
    notAssessed = List.copyOf(notAssessed);
  }

  /**
   * The cell of a device.
   *
   * @param device name of the device
   * @param fitted day it was fitted
   * @param life how long it lasts
   * @param due day on which it is to be changed
   */
  public record Cell(String device, LocalDate fitted, Period life, LocalDate due) {}

  /** Reckons the cells of a plan. */
  public static OwnCells of(SitePlan plan) {
    List<Cell> cells = new ArrayList<>();
    List<MissingFact> open = new ArrayList<>();
    for (Device device : plan.devices()) {
      Optional<Period> life = device.traits().cellLife().find();
      Optional<LocalDate> fitted = device.fitted().find();
      boolean hasCell =
          life.isPresent()
              || (device.traits().wiring().find().filter(Wiring.RADIO::equals).isPresent()
                  && !device.supply().isGiven());
      if (life.isPresent() && fitted.isPresent()) {
        cells.add(
            new Cell(
                device.name(),
                fitted.get(),
                life.get(),
                fitted.get().plusMonths(life.get().months())));
      } else if (hasCell) {
        open.add(
            new MissingFact(
                PlanPath.of("devices", device.name()),
                "when the cell of " + device.name() + " is due",
                life.isEmpty() ? "cell life: 4 y" : "fitted: YYYY-MM-DD"));
      }
    }
    cells.sort(Comparator.comparing(Cell::due).thenComparing(Cell::device));
    return new OwnCells(plan.service().find().flatMap(OwnCells::nextVisit), cells, open);
  }

  /** What a day means for a cell: over, before the next visit, or nothing. */
  public String dueWords(Cell cell, LocalDate day) {
    if (day.isAfter(cell.due())) {
      return "over";
    }
    return dueBeforeNextVisit(day).contains(cell) ? "before the next visit" : "";
  }

  private static Optional<LocalDate> nextVisit(Service service) {
    return service
        .lastVisit()
        .or(service.installed())
        .find()
        .flatMap(
            last -> service.interval().find().map(interval -> last.plusMonths(interval.months())));
  }

  /** Cells that still last on a day, and are due before the next visit after it. */
  public List<Cell> dueBeforeNextVisit(LocalDate day) {
    return nextVisit
        .map(visit ->
            cells.stream()
                .filter(cell -> !day.isAfter(cell.due()) && cell.due().isBefore(visit))
                .toList())
        .orElse(List.of());
  }
}
