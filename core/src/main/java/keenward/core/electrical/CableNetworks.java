package keenward.core.electrical;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import keenward.core.electrical.CableCircuit.Hung;
import keenward.core.electrical.CableCircuit.Wire;
import keenward.core.electrical.network.NetworkState;
import keenward.core.plan.Cable;
import keenward.core.plan.Device;
import keenward.core.plan.LoadKind;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Supply;
import org.jspecify.annotations.Nullable;

/**
 * The networks of cables of a plan, solved. Cables leave a supply and branch; they may meet again
 * in a ring. What hangs beyond a cable of unknown resistance still draws at the near end of that
 * cable, so that the voltages before it are right.
 */
final class CableNetworks {
  private final SitePlan plan;
  private final Map<String, LoadLine> loads = new HashMap<>();
  private final Map<String, Device> devices = new LinkedHashMap<>();
  private final Map<String, Set<String>> suppliesOf = new HashMap<>();
  private final List<CableNetwork> networks = new ArrayList<>();
  private final List<CableRun> runs = new ArrayList<>();
  private final Map<String, PowerAssessment.Shared> shared = new LinkedHashMap<>();
  private final List<MissingFact> open = new ArrayList<>();

  /**
   * Networks and what could not be computed.
   *
   * @param networks in the order of supplies and cables
   * @param runs one for each device at the end of known cables
   * @param shared places that several supplies feed
   * @param notAssessed cables and devices that could not be computed
   */
  record Found(
      List<CableNetwork> networks,
      List<CableRun> runs,
      Map<String, PowerAssessment.Shared> shared,
      List<MissingFact> notAssessed) {}

  private CableNetworks(SitePlan plan, List<PowerBudget> budgets) {
    this.plan = plan;
    plan.devices().forEach(device -> devices.put(device.name(), device));
    for (PowerBudget budget : budgets) {
      budget.loads().devices().forEach(line -> loads.put(line.name(), line));
    }
  }

  static Found of(SitePlan plan, List<PowerBudget> budgets) {
    CableNetworks search = new CableNetworks(plan, budgets);
    Map<Supply, Set<String>> fed = new LinkedHashMap<>();
    for (Supply supply : plan.supplies()) {
      fed.put(supply, Feeds.reach(plan, supply.name()));
    }
    fed.forEach((supply, reached) ->
        reached.forEach(node ->
            search
                .suppliesOf
                .computeIfAbsent(node, name -> new LinkedHashSet<>())
                .add(supply.name())));
    for (Supply supply : plan.supplies()) {
      for (List<Cable> cables : search.branches(supply.name())) {
        search.assess(supply, cables);
      }
    }
    search.reportUnfed();
    return new Found(
        List.copyOf(search.networks),
        List.copyOf(search.runs),
        search.shared,
        List.copyOf(search.open));
  }

  /** Cables fed by a supply, grouped by what hangs together without the supply itself. */
  private List<List<Cable>> branches(String supply) {
    List<Cable> left = new ArrayList<>();
    for (Cable cable : plan.cables()) {
      if (suppliesOf.getOrDefault(cable.from(), Set.of()).contains(supply)) {
        left.add(cable);
      }
    }
    List<List<Cable>> branches = new ArrayList<>();
    while (!left.isEmpty()) {
      Set<String> nodes = new HashSet<>(List.of(left.getFirst().to()));
      Set<Cable> branch = new HashSet<>();
      boolean hasGrown = true;
      while (hasGrown) {
        hasGrown = false;
        for (Cable cable : left) {
          if (!branch.contains(cable)
              && (nodes.contains(cable.from()) || nodes.contains(cable.to()))) {
            branch.add(cable);
            nodes.add(cable.to());
            if (!cable.from().equals(supply)) {
              nodes.add(cable.from());
            }
            hasGrown = true;
          }
        }
      }
      branches.add(left.stream().filter(branch::contains).toList());
      left.removeIf(branch::contains);
    }
    return branches;
  }

  private void assess(Supply supply, List<Cable> cables) {
    Optional<Cable> meeting =
        cables.stream().filter(cable -> feeding(cable).size() > 1).findFirst();
    if (meeting.isPresent()) {
      Cable cable = meeting.get();
      List<String> feeding = feeding(cable);
      if (feeding.getFirst().equals(supply.name())) {
        shared.put(cable.to(), new PowerAssessment.Shared(feeding, cable.name()));
        notAssessed(
            path(cable),
            "voltage beyond cable "
                + cable.name()
                + ", since "
                + String.join(" and ", feeding)
                + " both feed "
                + cable.to(),
            "to: ...");
      }
      return;
    }
    OptionalInt cells = Cells.of(supply);
    if (cells.isEmpty()) {
      for (String device : devicesOn(cables)) {
        notAssessed(
            PlanPath.of("supplies", supply.name()),
            "voltage at "
                + device
                + ", since the battery voltage of "
                + supply.name()
                + " cannot be told",
            "voltage: 13.6 V");
      }
      return;
    }
    Branch branch = new Branch(supply, cables);
    CableCircuit circuit = branch.circuit(cells.getAsInt());
    if (branch.isCertain && !circuit.wires().isEmpty()) {
      solve(supply, circuit, branch.hasRegulatorBeyond());
    }
    for (Cable cable : branch.unknown) {
      CableResistance.MissingPart part = CableResistance.missing(cable);
      for (String device : branch.devicesNotReached()) {
        notAssessed(
            path(cable),
            "voltage at " + device + ", since cable " + cable.name() + " " + part.what(),
            part.line());
      }
    }
  }

  private List<String> feeding(Cable cable) {
    return List.copyOf(suppliesOf.getOrDefault(cable.to(), Set.of()));
  }

  /** Which of a branch's places are reached over cables whose resistance is known. */
  private final class Branch {
    private final Supply supply;
    private final List<Cable> known = new ArrayList<>();
    private final List<Cable> unknown = new ArrayList<>();
    private final Map<String, Integer> nodes = new LinkedHashMap<>();
    // Places beyond an unknown cable, with the node at its near end, where their loads hang.
    private final Map<String, Integer> beyond = new LinkedHashMap<>();
    private final boolean isCertain;

    Branch(Supply supply, List<Cable> cables) {
      this.supply = supply;
      for (Cable cable : cables) {
        (CableResistance.of(cable).isPresent() ? known : unknown).add(cable);
      }
      nodes.put(supply.name(), 0);
      grow(
          known,
          cable -> {
            String near = nodes.containsKey(cable.from()) ? cable.from() : cable.to();
            String far = near.equals(cable.from()) ? cable.to() : cable.from();
            if (!nodes.containsKey(near) || nodes.containsKey(far)) {
              return false;
            }
            nodes.put(far, nodes.size());
            return true;
          });
      grow(cables, this::hangs);
      isCertain = cables.stream().allMatch(this::isTold);
    }

    private static void grow(List<Cable> cables, Predicate<Cable> step) {
      boolean hasGrown = true;
      while (hasGrown) {
        hasGrown = false;
        for (Cable cable : cables) {
          hasGrown |= step.test(cable);
        }
      }
    }

    private boolean hangs(Cable cable) {
      Integer from = at(cable.from());
      Integer to = at(cable.to());
      if (from != null && to == null) {
        beyond.put(cable.to(), from);
        return true;
      }
      if (to != null && from == null) {
        beyond.put(cable.from(), to);
        return true;
      }
      return false;
    }

    private @Nullable Integer at(String place) {
      Integer node = nodes.get(place);
      return node != null ? node : beyond.get(place);
    }

    /** Whether what lies beyond hangs on one node only, so that no ring closes over the unknown. */
    private boolean isTold(Cable cable) {
      boolean crosses = nodes.containsKey(cable.from()) && nodes.containsKey(cable.to());
      if (crosses) {
        return known.contains(cable);
      }
      return Objects.equals(at(cable.from()), at(cable.to()));
    }

    /** Whether a load beyond draws more than at the near end, where it is taken to hang. */
    boolean hasRegulatorBeyond() {
      return beyond.keySet().stream()
          .map(devices::get)
          .anyMatch(device ->
              device != null && device.traits().load().orElse(LoadKind.CURRENT) == LoadKind.POWER);
    }

    List<String> devicesNotReached() {
      Collection<String> places = new LinkedHashSet<>(beyond.keySet());
      if (!isCertain) {
        places.addAll(nodes.keySet());
      }
      return places.stream().filter(devices::containsKey).toList();
    }

    CableCircuit circuit(int cells) {
      List<Wire> wires = new ArrayList<>();
      for (Cable cable : known) {
        Integer from = nodes.get(cable.from());
        Integer to = nodes.get(cable.to());
        if (from != null && to != null) {
          wires.add(
              new Wire(
                  cable,
                  from,
                  to,
                  cable.conductor().find().orElseThrow(),
                  CableResistance.of(cable).orElseThrow()));
        }
      }
      List<Hung> hung = new ArrayList<>();
      nodes.forEach((place, node) -> hang(place, node, hung));
      beyond.forEach((place, node) -> hang(place, node, hung));
      return new CableCircuit(cells, List.copyOf(nodes.keySet()), wires, hung);
    }

    private void hang(String place, int node, List<Hung> hung) {
      Device device = devices.get(place);
      LoadLine load = loads.get(place);
      if (device != null && load != null && !place.equals(supply.name())) {
        hung.add(new Hung(node, load, device.traits().load().orElse(LoadKind.CURRENT)));
      }
    }
  }

  private List<String> devicesOn(List<Cable> cables) {
    return cables.stream().map(Cable::to).filter(devices::containsKey).distinct().toList();
  }

  private void solve(Supply supply, CableCircuit circuit, boolean drawsMore) {
    Map<CableState, NetworkState.Steady> volts = new EnumMap<>(CableState.class);
    Set<CableState> collapsed = EnumSet.noneOf(CableState.class);
    for (CableState state : CableState.values()) {
      circuit
          .solve(state)
          .ifPresentOrElse(found -> volts.put(state, found), () -> collapsed.add(state));
    }
    boolean isKnown =
        !drawsMore && circuit.loads().stream().allMatch(each -> each.load().isAlarmKnown());
    Certainty certainty = isKnown ? Certainty.KNOWN : Certainty.AT_MOST;
    List<CableNetwork.Line> lines = new ArrayList<>();
    for (Wire wire : circuit.wires()) {
      Map<CableState, Double> milliamps = new EnumMap<>(CableState.class);
      volts.forEach((state, found) -> milliamps.put(state, CableCircuit.milliamps(wire, found)));
      lines.add(
          new CableNetwork.Line(
              wire.cable(),
              Explained.known(
                  "Resistance of " + wire.cable().name(),
                  wire.resistance().working(),
                  wire.resistance().ohms(),
                  "ohm",
                  wire.resistance().conductor().source()),
              milliamps));
    }
    List<CableNetwork.Place> places = new ArrayList<>();
    circuit
        .ways()
        .forEach((node, way) -> {
          if (node != 0) {
            Map<CableState, Double> here = new EnumMap<>(CableState.class);
            volts.forEach((state, found) -> here.put(state, found.volts(node)));
            String name = circuit.nodes().get(node);
            Device device = devices.get(name);
            places.add(
                new CableNetwork.Place(
                    name,
                    device != null,
                    way.stream().mapToDouble(wire -> wire.resistance().run().metres()).sum(),
                    way.stream().map(wire -> wire.cable().name()).toList(),
                    here));
            if (device != null) {
              runs.add(
                  run(
                      supply,
                      circuit,
                      Optional.ofNullable(volts.get(CableState.EMPTY_IN_ALARM)),
                      device,
                      node,
                      way,
                      certainty));
            }
          }
        });
    Map<CableState, Double> atSupply = new EnumMap<>(CableState.class);
    volts.forEach((state, found) -> atSupply.put(state, found.volts(0)));
    networks.add(
        new CableNetwork(
            supply.name(), atSupply, lines, places, collapsed, certainty, broken(circuit)));
  }

  private static CableRun run(
      Supply supply,
      CableCircuit circuit,
      Optional<NetworkState.Steady> solved,
      Device device,
      int node,
      List<Wire> way,
      Certainty certainty) {
    double end = CableState.EMPTY_IN_ALARM.volts(circuit.cells());
    List<Explained> lines = new ArrayList<>();
    StringBuilder working = new StringBuilder(Figures.text(end));
    int at = 0;
    for (Wire wire : way) {
      int far = wire.from() == at ? wire.to() : wire.from();
      if (solved.isPresent()) {
        double lost = solved.get().volts(at) - solved.get().volts(far);
        lines.add(
            new Explained(
                "Drop in " + wire.cable().name(),
                wire.resistance().working()
                    + " x "
                    + Figures.text(lost / wire.resistance().ohms() * 1000)
                    + " mA",
                lost,
                "V",
                certainty == Certainty.KNOWN ? Certainty.KNOWN : Certainty.AT_LEAST,
                wire.resistance().conductor().source()));
        working.append(" - ").append(Figures.text(lost));
      }
      at = far;
    }
    Explained volts =
        solved
            .map(found ->
                new Explained(
                    "Voltage at " + device.name(),
                    working.toString(),
                    found.volts(node),
                    "V",
                    certainty,
                    EndVoltage.SOURCE))
            .orElse(
                Explained.known(
                    "Voltage at " + device.name(),
                    "",
                    0,
                    "V",
                    "the cables cannot carry these loads: no steady voltage exists"));
    List<Remedy> remedies =
        device
            .traits()
            .minimumVoltage()
            .find()
            .filter(least -> volts.value() < least.volts())
            .map(least -> CableRemedies.of(circuit, node, way, least.volts()))
            .orElse(List.of());
    return new CableRun(
        device,
        supply.name(),
        way.stream().map(wire -> wire.cable().name()).toList(),
        lines,
        volts,
        solved.isEmpty(),
        remedies);
  }

  /**
   * What each place of a ring still gets at worst when one cable breaks; nothing for places that a
   * break cuts off, and for a tree.
   */
  private static List<CableNetwork.Break> broken(CableCircuit circuit) {
    if (circuit.wires().size() < circuit.nodes().size()) {
      return List.of();
    }
    List<CableNetwork.Break> breaks = new ArrayList<>();
    for (Wire wire : circuit.wires()) {
      Optional<CableCircuit> left = circuit.without(wire);
      if (left.isPresent()) {
        Map<String, Double> volts = new LinkedHashMap<>();
        Optional<NetworkState.Steady> found = left.get().solve(CableState.EMPTY_IN_ALARM);
        for (int node = 1; node < circuit.nodes().size(); node++) {
          int at = node;
          volts.put(circuit.nodes().get(node), found.map(steady -> steady.volts(at)).orElse(0.0));
        }
        breaks.add(new CableNetwork.Break(wire.cable().name(), volts));
      }
    }
    return breaks;
  }

  private void reportUnfed() {
    for (Cable cable : plan.cables()) {
      if (!suppliesOf.containsKey(cable.from())) {
        notAssessed(
            path(cable),
            "voltage beyond cable " + cable.name() + ", since no supply feeds " + cable.from(),
            "from: ...");
      }
    }
  }

  private void notAssessed(PlanPath place, String why, String line) {
    open.add(new MissingFact(place, why, line));
  }

  private static PlanPath path(Cable cable) {
    return PlanPath.of("cables", cable.name());
  }
}
