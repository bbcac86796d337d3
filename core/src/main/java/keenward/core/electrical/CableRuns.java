package keenward.core.electrical;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import keenward.core.plan.Cable;
import keenward.core.plan.Device;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Supply;
import keenward.core.quantities.Conductor;
import keenward.core.quantities.Length;
import keenward.core.quantities.Voltage;

/**
 * Voltage at the end of each cable of a supply, for cables that branch but do not meet again: each
 * cable carries the currents of all devices beyond it, and loses the voltage of its own loop.
 */
final class CableRuns {
  /** Temperature of a conductor in a warm ceiling void; common practice, no source. */
  static final double CONDUCTOR_CELSIUS = 40;

  private final SitePlan plan;
  private final Map<String, LoadLine> loads = new HashMap<>();
  private final Map<String, Device> devices = new HashMap<>();
  private final List<CableRun> runs = new ArrayList<>();
  private final List<MissingFact> open = new ArrayList<>();
  private final Set<String> reached = new LinkedHashSet<>();

  /**
   * Runs and what could not be computed.
   *
   * @param runs one for each device at the end of known cables
   * @param notAssessed cables and devices that could not be computed
   */
  record Found(List<CableRun> runs, List<MissingFact> notAssessed) {}

  private CableRuns(SitePlan plan, List<PowerBudget> budgets) {
    this.plan = plan;
    plan.devices().forEach(device -> devices.put(device.name(), device));
    for (PowerBudget budget : budgets) {
      budget.loads().devices().forEach(line -> loads.put(line.name(), line));
    }
  }

  static Found of(SitePlan plan, List<PowerBudget> budgets) {
    CableRuns search = new CableRuns(plan, budgets);
    for (Supply supply : plan.supplies()) {
      search.follow(supply);
    }
    search.reportUnfed();
    return new Found(List.copyOf(search.runs), List.copyOf(search.open));
  }

  /** A cable followed so far, with the cable before it. */
  private record Step(Cable cable, Optional<Step> before) {
    List<Cable> fromSupply() {
      List<Cable> cables = new ArrayList<>();
      Optional<Step> step = Optional.of(this);
      while (step.isPresent()) {
        cables.addFirst(step.get().cable());
        step = step.get().before();
      }
      return cables;
    }
  }

  private void follow(Supply supply) {
    List<Step> next = new ArrayList<>();
    leaving(supply.name()).forEach(cable -> next.add(new Step(cable, Optional.empty())));
    while (!next.isEmpty()) {
      Step step = next.removeFirst();
      Cable cable = step.cable();
      boolean again = !reached.add(cable.to());
      if (again || cable.to().equals(supply.name())) {
        open.add(
            new MissingFact(
                path(cable),
                "voltage beyond cable "
                    + cable.name()
                    + ", since "
                    + cable.to()
                    + " is fed from two sides (a ring is not a tree)",
                "to: ..."));
        continue;
      }
      Device device = devices.get(cable.to());
      if (device != null) {
        run(supply, device, step.fromSupply());
      }
      for (Cable further : leaving(cable.to())) {
        next.add(new Step(further, Optional.of(step)));
      }
    }
  }

  private List<Cable> leaving(String node) {
    return plan.cables().stream().filter(cable -> cable.from().equals(node)).toList();
  }

  private void run(Supply supply, Device device, List<Cable> cables) {
    OptionalDouble end =
        supply
            .voltage()
            .find()
            .map(Voltage::volts)
            .map(EndVoltage::of)
            .orElse(OptionalDouble.empty());
    if (end.isEmpty()) {
      open.add(
          new MissingFact(
              PlanPath.of("supplies", supply.name()),
              "voltage at "
                  + device.name()
                  + ", since the battery voltage of "
                  + supply.name()
                  + " cannot be told",
              "voltage: 13.6 V"));
      return;
    }
    List<Explained> lines = new ArrayList<>();
    double volts = end.getAsDouble();
    Certainty certainty = Certainty.KNOWN;
    for (Cable cable : cables) {
      Optional<Explained> drop = drop(device, cable);
      if (drop.isEmpty()) {
        return;
      }
      lines.add(drop.get());
      volts -= drop.get().value();
      if (drop.get().certainty() != Certainty.KNOWN) {
        certainty = Certainty.AT_MOST;
      }
    }
    StringBuilder working = new StringBuilder(Figures.text(end.getAsDouble()));
    lines.forEach(line -> working.append(" - ").append(Figures.text(line.value())));
    Explained result =
        new Explained(
            "Voltage at " + device.name(),
            working.toString(),
            volts,
            "V",
            certainty,
            EndVoltage.SOURCE);
    runs.add(
        new CableRun(
            device, supply.name(), cables.stream().map(Cable::name).toList(), lines, result));
  }

  private Optional<Explained> drop(Device device, Cable cable) {
    Length length = cable.length().orNull();
    Conductor conductor = cable.conductor().orNull();
    if (length == null || conductor == null) {
      open.add(
          new MissingFact(
              path(cable),
              "voltage at "
                  + device.name()
                  + ", since cable "
                  + cable.name()
                  + " lacks "
                  + (length == null ? "its length" : "its conductor"),
              length == null ? "length: ... m" : "conductor: ... mm2"));
      return Optional.empty();
    }
    Optional<ConductorResistance> resistance = ConductorResistance.of(conductor);
    if (resistance.isEmpty()) {
      open.add(
          new MissingFact(
              path(cable).then("conductor"),
              "voltage at " + device.name() + ", since no table covers " + conductor.written(),
              "conductor: ... mm2"));
      return Optional.empty();
    }
    ConductorResistance warm = resistance.get().at(CONDUCTOR_CELSIUS);
    int cores = cable.doubled().orElse(false) ? 2 : 1;
    TwoWireRun run = new TwoWireRun(length.metres(), warm.ohmsPerKilometre(), cores);
    double milliamps = 0;
    Certainty certainty = Certainty.KNOWN;
    for (String node : beyond(cable)) {
      LoadLine load = loads.get(node);
      if (load != null) {
        milliamps += load.alarmMilliamps();
        certainty = load.isAlarmKnown() ? certainty : Certainty.AT_LEAST;
      }
    }
    String working =
        "2 x "
            + Figures.text(length.metres())
            + " m x "
            + Figures.text(warm.ohmsPerKilometre())
            + " ohm/km"
            + (cores == 2 ? " / 2 cores" : "")
            + " x "
            + Figures.text(milliamps)
            + " mA";
    return Optional.of(
        new Explained(
            "Drop in " + cable.name(),
            working,
            run.dropVolts(milliamps),
            "V",
            certainty,
            warm.source()));
  }

  /** Nodes fed through a cable; each once, so that a ring cannot hold the search. */
  private Set<String> beyond(Cable cable) {
    Set<String> nodes = new LinkedHashSet<>(List.of(cable.to()));
    List<String> next = new ArrayList<>(nodes);
    while (!next.isEmpty()) {
      for (Cable further : leaving(next.removeLast())) {
        if (nodes.add(further.to())) {
          next.add(further.to());
        }
      }
    }
    return nodes;
  }

  private void reportUnfed() {
    Set<String> sources = new LinkedHashSet<>(reached);
    plan.supplies().forEach(supply -> sources.add(supply.name()));
    for (Cable cable : plan.cables()) {
      if (!sources.contains(cable.from())) {
        open.add(
            new MissingFact(
                path(cable),
                "voltage beyond cable " + cable.name() + ", since no supply feeds " + cable.from(),
                "from: ..."));
      }
    }
  }

  private static PlanPath path(Cable cable) {
    return PlanPath.of("cables", cable.name());
  }
}
