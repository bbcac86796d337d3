package keenward.core.electrical;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.electrical.network.Network;
import keenward.core.electrical.network.NetworkState;
import keenward.core.electrical.network.NodeLoads;
import keenward.core.electrical.network.Segment;
import keenward.core.plan.Cable;
import keenward.core.plan.LoadKind;
import keenward.core.quantities.Conductor;

/**
 * One network of cables, ready to be solved as it is planned or with changed cables.
 *
 * @param cells cells of the supply's battery
 * @param nodes names of its nodes; the supply is the first
 * @param wires its cables, each with a known resistance
 * @param loads loads with the node that they hang on
 */
record CableCircuit(int cells, List<String> nodes, List<Wire> wires, List<Hung> loads) {

  /**
   * A cable between two nodes by number.
   *
   * @param size its conductors, which may differ from those of the plan
   */
  record Wire(Cable cable, int from, int to, Conductor size, CableResistance resistance) {

    /** The same cable with other conductors or another length. */
    Wire with(Conductor otherSize, double metres, boolean isDoubled) {
      return new Wire(
          cable,
          from,
          to,
          otherSize,
          CableResistance.of(cable, metres, otherSize, isDoubled).orElseThrow());
    }
  }

  /** A load on a node. */
  record Hung(int node, LoadLine load, LoadKind kind) {}

  CableCircuit {
    nodes = List.copyOf(nodes);
    wires = List.copyOf(wires);
    loads = List.copyOf(loads);
  }

  /** The circuit with one cable changed. */
  CableCircuit with(Wire changed) {
    List<Wire> all = new ArrayList<>(wires);
    all.replaceAll(wire -> wire.cable().equals(changed.cable()) ? changed : wire);
    return new CableCircuit(cells, nodes, all, loads);
  }

  /** The circuit without one cable; empty where that cuts something off. */
  Optional<CableCircuit> without(Wire broken) {
    List<Wire> left = wires.stream().filter(wire -> !wire.equals(broken)).toList();
    CableCircuit circuit = new CableCircuit(cells, nodes, left, loads);
    return circuit.ways().size() == nodes.size() ? Optional.of(circuit) : Optional.empty();
  }

  /** What it settles to; empty when the loads get no steady voltage. */
  Optional<NetworkState.Steady> solve(CableState state) {
    Network network =
        Network.of(
            nodes.size(),
            wires.stream()
                .map(wire -> new Segment(wire.from(), wire.to(), wire.resistance().ohms()))
                .toList());
    return switch (network.solve(state.volts(cells), drawn(state))) {
      case NetworkState.Steady steady -> Optional.of(steady);
      case NetworkState.Collapsed collapsed -> Optional.empty();
    };
  }

  private NodeLoads drawn(CableState state) {
    NodeLoads drawn = new NodeLoads(nodes.size());
    double nominal = cells * Cells.NOMINAL_VOLTS;
    for (Hung each : loads) {
      double amperes = state.milliamps(each.load()) / 1000;
      switch (each.kind()) {
        case CURRENT -> drawn.current(each.node(), amperes);
        case POWER -> drawn.power(each.node(), amperes * nominal);
        case RESISTANCE -> drawn.conductance(each.node(), amperes / nominal);
      }
    }
    return drawn;
  }

  /** Current from a cable's near end to its far end, in milliamperes. */
  static double milliamps(Wire wire, NetworkState.Steady volts) {
    return (volts.volts(wire.from()) - volts.volts(wire.to())) / wire.resistance().ohms() * 1000;
  }

  /** The cables of the way with the fewest cables from the supply to each node, by node. */
  Map<Integer, List<Wire>> ways() {
    Map<Integer, List<Wire>> ways = new LinkedHashMap<>();
    ways.put(0, List.of());
    List<Integer> next = new ArrayList<>(List.of(0));
    while (!next.isEmpty()) {
      int node = next.removeFirst();
      for (Wire wire : wires) {
        if (wire.from() == node || wire.to() == node) {
          int far = wire.from() == node ? wire.to() : wire.from();
          if (!ways.containsKey(far)) {
            List<Wire> way = new ArrayList<>(ways.get(node));
            way.add(wire);
            ways.put(far, way);
            next.add(far);
          }
        }
      }
    }
    return ways;
  }
}
