package keenward.core.electrical;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import keenward.core.plan.Fact;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Supply;
import keenward.core.quantities.Capacity;
import keenward.core.quantities.Current;

/**
 * Computes the budget of one supply; the figures of each step are made by the class that owns its
 * method.
 */
final class PowerBudgets {
  private final SitePlan plan;
  private final Supply supply;
  private final SupplyLoads loads;
  private final List<MissingFact> open = new ArrayList<>();

  private PowerBudgets(SitePlan plan, Supply supply, Feeds feeds) {
    this.plan = plan;
    this.supply = supply;
    this.loads = SupplyLoads.of(plan, supply, feeds);
  }

  static PowerBudget of(SitePlan plan, Supply supply, Feeds feeds) {
    return new PowerBudgets(plan, supply, feeds).compute();
  }

  private PowerBudget compute() {
    Explained standby = loads.standby();
    Explained alarm = loads.alarm();
    open.addAll(loads.unknown());
    BatteryDuties.Found found = BatteryDuties.of(plan.regimes(), supply);
    open.addAll(found.notAssessed());
    Explained temperature = temperature();
    List<BatteryNeed> needs =
        found.duties().stream()
            .map(duty ->
                BatteryNeed.of(
                    duty,
                    standby,
                    alarm,
                    loads.backAtRest(duty.alarmMinutes()),
                    temperature,
                    AgeAllowance.of(supply.ageingFactor(), duty)))
            .toList();
    Optional<BatteryNeed> strictest =
        needs.stream().max(Comparator.comparingDouble(need -> need.needed().value()));
    Optional<Explained> fitted = fitted();
    Optional<Explained> margin =
        strictest.flatMap(need -> fitted.map(battery -> margin(need, battery)));
    Optional<BatteryChoice> choice =
        strictest.map(need ->
            BatteryChoice.of(
                need.needed().value(), supply, Recharge.strictestRule(found.duties())));
    Optional<Explained> left = leftForBattery(standby);
    Optional<Recharge> recharge = recharge(fitted, found, left);
    Optional<OutputLoad> output = output();
    return new PowerBudget(
        supply,
        loads,
        standby,
        alarm,
        temperature,
        needs,
        strictest,
        fitted,
        margin,
        choice,
        left,
        recharge,
        output,
        information(standby, alarm, fitted),
        open);
  }

  private Explained temperature() {
    Explained factor = ColdFactor.of(supply.lowestTemperature());
    if (!supply.lowestTemperature().isGiven()) {
      missing("the battery's loss in the cold", "lowest temperature: ... C");
    } else if (factor.certainty() != Certainty.KNOWN) {
      open.add(
          new MissingFact(
              path().then("lowest temperature"),
              "the battery of " + supply.name() + " at a temperature outside IEEE Std 485, Table 1",
              "lowest temperature: " + Figures.text(TemperatureFactor.LOWEST_CELSIUS) + " C"));
    }
    return factor;
  }

  private Optional<Explained> fitted() {
    Optional<Capacity> capacity =
        supply.battery().find().flatMap(battery -> battery.capacity().find());
    if (capacity.isEmpty()) {
      missing("the fitted battery", "battery: { capacity: ... Ah }");
    }
    int count = supply.battery().find().map(battery -> battery.count().orElse(1)).orElse(1);
    return capacity.map(each ->
        Explained.known(
            count > 1 ? "Batteries fitted" : "Battery fitted",
            count > 1 ? count + " in parallel x " + Figures.text(each.ampereHours()) + " Ah" : "",
            count * each.ampereHours(),
            "Ah",
            "supplies / " + supply.name()));
  }

  private static Explained margin(BatteryNeed need, Explained fitted) {
    return new Explained(
        "Margin",
        Figures.text(fitted.value()) + " Ah - " + Figures.text(need.needed().value()) + " Ah",
        fitted.value() - need.needed().value(),
        "Ah",
        need.needed().certainty() == Certainty.KNOWN ? Certainty.KNOWN : Certainty.AT_MOST,
        need.duty().regime());
  }

  /** What the load at rest leaves for the battery of a current that both share. */
  private Optional<Explained> leftForBattery(Explained standby) {
    return positive(supply.totalCurrent())
        .map(total ->
            new Explained(
                "Current left for the battery",
                Figures.text(total) + " mA - " + Figures.text(standby.value()) + " mA",
                total - standby.value(),
                "mA",
                standby.certainty() == Certainty.KNOWN ? Certainty.KNOWN : Certainty.AT_MOST,
                "total current less the load at rest"));
  }

  private Optional<Recharge> recharge(
      Optional<Explained> fitted, BatteryDuties.Found found, Optional<Explained> left) {
    Optional<Double> current = positive(supply.chargeCurrent());
    if (current.isEmpty()) {
      missing("the recharge time", "charge current: ... mA");
    }
    if (left.filter(each -> !(each.value() > 0)).isPresent()) {
      return Optional.empty();
    }
    return fitted.flatMap(battery ->
        current.map(milliamps -> {
          boolean isShared = left.filter(each -> each.value() < milliamps).isPresent();
          double charging = isShared ? left.orElseThrow().value() : milliamps;
          boolean isKnown = left.filter(each -> each.certainty() != Certainty.KNOWN).isEmpty();
          return Recharge.of(
              battery.value(),
              charging,
              isKnown ? Certainty.KNOWN : Certainty.AT_LEAST,
              found.duties());
        }));
  }

  private Optional<OutputLoad> output() {
    Optional<Double> rating = positive(supply.rating());
    if (rating.isEmpty()) {
      missing("the load of its output", "rating: ... mA");
    }
    return rating.map(milliamps -> OutputLoad.of(loads, milliamps));
  }

  private List<Explained> information(
      Explained standby, Explained alarm, Optional<Explained> fitted) {
    List<Explained> lines = new ArrayList<>();
    if (fitted.isEmpty() || !(fitted.get().value() > 0)) {
      return lines;
    }
    double capacity = fitted.get().value();
    if (standby.value() > 0) {
      lines.add(runTime("Fitted battery lasts at rest", capacity, standby));
    }
    if (alarm.value() > 0) {
      lines.add(runTime("Fitted battery lasts in alarm", capacity, alarm));
    }
    positive(supply.chargeCurrent())
        .ifPresent(milliamps ->
            lines.add(
                Explained.known(
                    "Charging rate",
                    Figures.text(milliamps / 1000) + " A / " + Figures.text(capacity) + " Ah",
                    milliamps / 1000 / capacity,
                    "C",
                    "usual limit 0.3 C, common practice, from memory")));
    return lines;
  }

  private static Explained runTime(String name, double capacity, Explained load) {
    double amperes = load.value() / 1000;
    return new Explained(
        name,
        "new and at 25 C, "
            + Figures.text(capacity)
            + " Ah at "
            + Figures.text(amperes)
            + " A with k "
            + Figures.text(Peukert.USUAL_EXPONENT),
        Peukert.carefulHours(capacity, amperes, Peukert.USUAL_EXPONENT),
        "h",
        load.certainty() == Certainty.KNOWN ? Certainty.KNOWN : Certainty.AT_MOST,
        Peukert.SOURCE);
  }

  private static Optional<Double> positive(Fact<Current> current) {
    return current.find().map(Current::milliamps).filter(milliamps -> milliamps > 0);
  }

  private PlanPath path() {
    return PlanPath.of("supplies", supply.name());
  }

  private void missing(String what, String line) {
    open.add(new MissingFact(path(), what + " of supply " + supply.name(), line));
  }
}
