package keenward.core.electrical.outage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import keenward.core.electrical.AgeAllowance;
import keenward.core.electrical.BatteryDuty;
import keenward.core.electrical.BatteryNeed;
import keenward.core.electrical.CableNetwork;
import keenward.core.electrical.CableState;
import keenward.core.electrical.Cells;
import keenward.core.electrical.Certainty;
import keenward.core.electrical.EndVoltage;
import keenward.core.electrical.Explained;
import keenward.core.electrical.Figures;
import keenward.core.electrical.LoadLine;
import keenward.core.electrical.PowerAssessment;
import keenward.core.electrical.PowerBudget;
import keenward.core.electrical.TemperatureFactor;
import keenward.core.plan.Device;
import keenward.core.plan.Fact;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Setting;
import keenward.core.plan.Settings;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Supply;
import keenward.core.quantities.Voltage;

/** Reckons the outage of one supply. */
final class OutageReckoning {
  private static final double MILLISECONDS_AN_HOUR = 3_600_000;

  /** Volts of a cell at which a low battery is signalled; common practice, from memory. */
  static final double LOW_VOLTS_A_CELL = 1.9;

  private final SitePlan plan;
  private final Settings settings;
  private final PowerAssessment power;
  private final PowerBudget budget;
  private final Supply supply;
  private final List<MissingFact> open;
  private final Certainty certainty;
  private final List<OutageEvent> events = new ArrayList<>();

  OutageReckoning(
      SitePlan plan,
      Settings settings,
      PowerAssessment power,
      PowerBudget budget,
      List<MissingFact> open) {
    this.plan = plan;
    this.settings = settings;
    this.power = power;
    this.budget = budget;
    this.supply = budget.supply();
    this.open = open;
    boolean isKnown =
        budget.standby().certainty() == Certainty.KNOWN
            && budget.alarm().certainty() == Certainty.KNOWN
            && budget.temperature().certainty() == Certainty.KNOWN;
    certainty = isKnown ? Certainty.KNOWN : Certainty.AT_MOST;
  }

  Optional<Outage> reckon() {
    Optional<Explained> fitted = budget.fitted().filter(each -> each.value() > 0);
    OptionalInt cells = Cells.of(supply);
    if (fitted.isEmpty()) {
      missing("since no capacity above 0 Ah is given", "battery: { capacity: ... Ah }");
      return Optional.empty();
    }
    if (cells.isEmpty()) {
      missing("since the battery voltage cannot be told", "voltage: 13.6 V");
      return Optional.empty();
    }
    if (!(budget.standby().value() > 0)) {
      missing("since nothing is known to draw from it at rest", "own standby current: ... mA");
      return Optional.empty();
    }
    Optional<BatteryDuty> duty = budget.strictest().map(BatteryNeed::duty);
    Explained available = available(fitted.get());
    Explained cutOff = cutOff(cells.getAsInt());
    List<Discharge.Phase> phases = phases(duty);
    List<Outage.Stretch> stretches =
        new Discharge(available.value(), cells.getAsInt(), cutOff.value()).run(phases);
    Outage.Moment last = stretches.getLast().to();
    tell(OutageEvent.Kind.MAINS_FAILS, "Mains fails", "", 0, "", Optional.empty());
    reportOfFailure(last.hours());
    duty.ifPresent(each -> tellDuty(each, last.hours()));
    lowBattery(stretches, cells.getAsInt());
    devices(stretches, phases);
    tellEnd(last, cutOff);
    events.sort(Comparator.comparingDouble(OutageEvent::hours).thenComparing(OutageEvent::kind));
    return Optional.of(
        new Outage(supply.name(), duty, available, cutOff, stretches, List.copyOf(events)));
  }

  private Explained available(Explained fitted) {
    Explained age =
        budget
            .strictest()
            .map(BatteryNeed::age)
            .orElseGet(() -> AgeAllowance.of(supply.ageingFactor()));
    double factor = budget.temperature().value() * age.value();
    return new Explained(
        "Capacity left of the battery",
        Figures.text(fitted.value())
            + " Ah / temperature "
            + Figures.text(budget.temperature().value())
            + " / age "
            + Figures.text(age.value()),
        fitted.value() / factor,
        "Ah",
        budget.temperature().certainty() == Certainty.KNOWN ? Certainty.KNOWN : Certainty.AT_MOST,
        "cold and at its end of life; " + TemperatureFactor.SOURCE);
  }

  private Explained cutOff(int cells) {
    String name = "Battery is switched off at";
    return supply
        .cutOff()
        .find()
        .map(
            stated -> Explained.known(name, "", stated.volts(), "V", "supplies / " + supply.name()))
        .orElseGet(() ->
            Explained.known(
                name,
                cells + " cells x " + Figures.text(EndVoltage.VOLTS_A_CELL) + " V",
                cells * EndVoltage.VOLTS_A_CELL,
                "V",
                "no cut off stated; " + EndVoltage.SOURCE));
  }

  private List<Discharge.Phase> phases(Optional<BatteryDuty> duty) {
    List<Discharge.Phase> phases = new ArrayList<>();
    if (duty.isPresent()) {
      double rest = duty.get().standbyHours();
      double minutes = duty.get().alarmMinutes();
      phases.add(new Discharge.Phase(rest, budget.standby().value(), false));
      List<Double> ends =
          budget.loads().lines().stream()
              .map(line -> line.alarmMinutes(minutes))
              .distinct()
              .sorted()
              .filter(end -> end > 0)
              .toList();
      for (double end : ends) {
        phases.add(new Discharge.Phase(rest + end / 60, alarmLoad(minutes, end), true));
      }
    }
    phases.add(new Discharge.Phase(Double.POSITIVE_INFINITY, budget.standby().value(), false));
    return phases;
  }

  /** The load in the part of the alarm that ends at a minute. */
  private double alarmLoad(double minutes, double end) {
    return budget.loads().lines().stream()
        .mapToDouble(line ->
            line.alarmMinutes(minutes) >= end ? line.alarmMilliamps() : line.standbyMilliamps())
        .sum();
  }

  private void reportOfFailure(double lastHours) {
    if (supply.signalsMainsFailure().orElse(false)) {
      Settings.Resolved delay = settings.get(Setting.MAINS_FAILURE_REPORT);
      double hours = delay.value() / MILLISECONDS_AN_HOUR;
      if (hours <= lastHours) {
        tell(
            OutageEvent.Kind.FAILURE_REPORTED,
            "Mains failure is signalled",
            "",
            hours,
            delay.source(),
            Optional.empty());
      }
    }
  }

  private void tellDuty(BatteryDuty duty, double lastHours) {
    double rest = duty.standbyHours();
    double ends = rest + duty.alarmMinutes() / 60;
    if (rest <= lastHours) {
      tell(
          OutageEvent.Kind.ALARM_BEGINS,
          "Time at rest is over, alarm begins",
          "",
          rest,
          duty.source(),
          Optional.empty());
    }
    for (LoadLine line : budget.loads().lines()) {
      double minutes = line.alarmMinutes(duty.alarmMinutes());
      double stops = rest + minutes / 60;
      if (minutes < duty.alarmMinutes()
          && line.alarmMilliamps() > line.standbyMilliamps()
          && stops <= lastHours) {
        tell(
            OutageEvent.Kind.DEVICE_STOPS,
            line.name() + " is back at rest",
            Figures.text(line.alarmMilliamps())
                + " mA to "
                + Figures.text(line.standbyMilliamps())
                + " mA",
            stops,
            line.alarmTimeSource(),
            Optional.of(line.name()));
      }
    }
    if (ends <= lastHours) {
      tell(
          OutageEvent.Kind.DUTY_ENDS,
          "All that " + duty.regime() + " wants is done",
          duty.words(),
          ends,
          duty.source(),
          Optional.empty());
    }
  }

  private void lowBattery(List<Outage.Stretch> stretches, int cells) {
    double volts = cells * LOW_VOLTS_A_CELL;
    for (Outage.Stretch stretch : stretches) {
      OptionalDouble when = Discharge.fallsBelow(stretch.from(), stretch.to(), volts);
      if (when.isPresent()) {
        tell(
            OutageEvent.Kind.LOW_BATTERY,
            "Low battery is signalled",
            "battery below " + Figures.text(volts) + " V",
            when.getAsDouble(),
            "1.9 V a cell, common practice (from memory); " + DischargeCurve.SOURCE,
            Optional.empty());
        return;
      }
    }
  }

  private void devices(List<Outage.Stretch> stretches, List<Discharge.Phase> phases) {
    List<String> unknown = new ArrayList<>();
    for (LoadLine line : budget.loads().devices()) {
      Optional<Device> device =
          plan.devices().stream().filter(each -> each.name().equals(line.name())).findFirst();
      Fact<Voltage> least =
          device.map(each -> each.traits().minimumVoltage()).orElse(Fact.missing());
      least
          .find()
          .ifPresentOrElse(
              volts -> death(line.name(), volts.volts(), stretches, phases),
              () -> {
                if (line.alarmMilliamps() > 0) {
                  unknown.add(line.name());
                }
              });
    }
    if (!unknown.isEmpty()) {
      open.add(
          new MissingFact(
              PlanPath.of("devices", unknown.getFirst()),
              "when "
                  + String.join(", ", unknown)
                  + " would fail on the battery of "
                  + supply.name()
                  + ", whose least voltage is not known",
              "minimum voltage: ... V"));
    }
  }

  private void death(
      String device, double least, List<Outage.Stretch> stretches, List<Discharge.Phase> phases) {
    for (Outage.Stretch stretch : stretches) {
      boolean isAlarm = isAlarm(stretch, phases);
      OptionalDouble drop = drop(device, isAlarm);
      double lost = drop.orElse(0);
      OptionalDouble when = Discharge.fallsBelow(stretch.from(), stretch.to(), least + lost);
      if (when.isPresent()) {
        String working =
            Double.isInfinite(lost)
                ? "its cables collapse in alarm"
                : "needs "
                    + Figures.text(least)
                    + " V"
                    + (drop.isPresent()
                        ? " + " + Figures.text(lost) + " V lost in cables"
                        : ", cables not counted")
                    + (isAlarm ? ", in alarm" : ", at rest")
                    + ", battery at "
                    + Figures.text(stretch.from().towards(stretch.to(), when.getAsDouble()).volts())
                    + " V";
        tell(
            OutageEvent.Kind.DEVICE_DIES,
            device + " gets too little",
            working,
            when.getAsDouble(),
            DischargeCurve.SOURCE,
            Optional.of(device));
        return;
      }
    }
  }

  private static boolean isAlarm(Outage.Stretch stretch, List<Discharge.Phase> phases) {
    for (Discharge.Phase phase : phases) {
      if (stretch.from().hours() < phase.untilHours()) {
        return phase.isAlarm();
      }
    }
    return false;
  }

  /**
   * What the cables to a device lose: in alarm what they lose at the end of discharge with every
   * device in alarm. Infinite where the loads get no steady voltage; empty without known cables.
   */
  private OptionalDouble drop(String device, boolean isAlarm) {
    CableState state = isAlarm ? CableState.EMPTY_IN_ALARM : CableState.FULL_AT_REST;
    for (CableNetwork network : power.networks()) {
      for (CableNetwork.Place place : network.places()) {
        if (network.supply().equals(supply.name()) && place.name().equals(device)) {
          Double supplied = network.atSupply().get(state);
          Double arrives = place.volts().get(state);
          return OptionalDouble.of(
              supplied == null || arrives == null ? Double.POSITIVE_INFINITY : supplied - arrives);
        }
      }
    }
    return OptionalDouble.empty();
  }

  private void tellEnd(Outage.Moment last, Explained cutOff) {
    boolean isYear = last.hours() >= Discharge.YEAR_HOURS && last.share() > 0;
    boolean isEmpty = last.share() <= 0;
    tell(
        isYear ? OutageEvent.Kind.YEAR_OVER : OutageEvent.Kind.BATTERY_ENDS,
        isYear
            ? "Reckoning ends; self-discharge, about 3 % a month, empties the battery before its load does"
            : isEmpty ? "Battery is empty" : "Battery is switched off",
        Figures.text(last.ampereHours())
            + " Ah taken out, battery at "
            + Figures.text(last.volts())
            + " V, off at "
            + Figures.text(cutOff.value())
            + " V",
        last.hours(),
        DischargeCurve.SOURCE,
        Optional.empty());
  }

  private void tell(
      OutageEvent.Kind kind,
      String name,
      String working,
      double hours,
      String source,
      Optional<String> device) {
    boolean isComputed =
        kind == OutageEvent.Kind.LOW_BATTERY
            || kind == OutageEvent.Kind.DEVICE_DIES
            || kind == OutageEvent.Kind.BATTERY_ENDS;
    events.add(
        new OutageEvent(
            kind,
            device,
            new Explained(
                name, working, hours, "h", isComputed ? certainty : Certainty.KNOWN, source)));
  }

  private void missing(String why, String line) {
    open.add(
        new MissingFact(
            PlanPath.of("supplies", supply.name()),
            "how long the battery of " + supply.name() + " lasts, " + why,
            line));
  }
}
