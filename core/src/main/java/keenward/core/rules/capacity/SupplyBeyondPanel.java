package keenward.core.rules.capacity;

import java.util.List;
import java.util.Optional;
import keenward.core.dialogue.description.Capacity;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Supply;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** The plan states more of the panel's own supply than the panel gives. */
public final class SupplyBeyondPanel implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.CAPACITY, 2, "supply-beyond-panel", Severity.ERROR)
          .source(Source.practice())
          .purpose(
              "Compares rating, charging current and battery of the supply that feeds the panel with what the panel"
                  + " description states.")
          .consequence("The power sums come out well on paper, and the panel gives less.")
          .limits(
              "Looks at the supply named by `panel: { supply: ... }`; other supplies have their own data sheets.")
          .remedy("Correct the plan after the panel's data sheet, or plan a supply of its own.")
          .broken(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { rating: 3000 mA }
              panel: { description: Marram 32, supply: Main }
              devices:
                Front contact: { kind: contact, wiring: wired }
              zones:
                1: { name: Front door, response: entry-exit, device: Front contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { rating: 1000 mA }
              panel: { description: Marram 32, supply: Main }
              devices:
                Front contact: { kind: contact, wiring: wired }
              zones:
                1: { name: Front door, response: entry-exit, device: Front contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              supplies:
                Main: { rating: 1500 mA }
              panel: { description: Marram 32, supply: Main }
              devices:
                Front contact: { kind: contact, wiring: wired }
              zones:
                1: { name: Front door, response: entry-exit, device: Front contact }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    Optional<String> name = input.plan().panel().supply().find();
    Optional<Supply> supply =
        name.flatMap(each ->
            input.plan().supplies().stream()
                .filter(other -> other.name().equals(each))
                .findFirst());
    if (supply.isEmpty()) {
      return;
    }
    if (input.panel().isEmpty()) {
      report.notAssessed(
          PlanPath.of("panel", "description"),
          "whether the panel gives what '"
              + supply.get().name()
              + "' is to give, since its description is not at hand",
          "panel: { description: ... }");
      return;
    }
    judge(supply.get(), input.panel().get(), report);
  }

  private static void judge(Supply supply, PanelDescription panel, Report report) {
    Capacity capacity = panel.capacity();
    PlanPath place = PlanPath.of("supplies", supply.name());
    if (supply.rating().isGiven() && capacity.auxiliaryMilliamps().isPresent()) {
      double planned = supply.rating().map(each -> each.milliamps()).orElse(0.0);
      most(
          "rating",
          planned,
          capacity.auxiliaryMilliamps().getAsInt(),
          place.then("rating"),
          panel,
          report);
    }
    if (supply.chargeCurrent().isGiven() && capacity.chargeMilliamps().isPresent()) {
      double planned = supply.chargeCurrent().map(each -> each.milliamps()).orElse(0.0);
      most(
          "charging current",
          planned,
          capacity.chargeMilliamps().getAsInt(),
          place.then("charge current"),
          panel,
          report);
    }
    Optional<Double> battery =
        supply
            .battery()
            .find()
            .flatMap(each -> each.capacity().find())
            .map(each -> each.ampereHours());
    if (battery.isPresent() && !capacity.batteryMilliampHours().isEmpty()) {
      battery(battery.get(), capacity.batteryMilliampHours(), place.then("battery"), panel, report);
    }
  }

  private static void most(
      String what,
      double planned,
      int most,
      PlanPath place,
      PanelDescription panel,
      Report report) {
    report.judged();
    if (planned > most) {
      report.found(
          place,
          "The plan gives the supply of '"
              + panel.panel()
              + "' a "
              + what
              + " of "
              + Words.number(planned)
              + " mA, and the panel has "
              + most
              + " mA.",
          "Correct the plan, or plan a supply of its own.",
          Involved.NOTHING);
    }
  }

  private static void battery(
      double ampereHours,
      List<Integer> sizes,
      PlanPath place,
      PanelDescription panel,
      Report report) {
    report.judged();
    if (sizes.stream().noneMatch(size -> size == Math.round(ampereHours * 1000))) {
      report.found(
          place,
          "The plan gives '"
              + panel.panel()
              + "' a battery of "
              + Words.number(ampereHours)
              + " Ah, and the panel takes "
              + Words.list(sizes.stream().map(size -> Words.number(size / 1000.0) + " Ah").toList())
              + ".",
          "Choose a battery that the panel takes.",
          Involved.NOTHING);
    }
  }
}
