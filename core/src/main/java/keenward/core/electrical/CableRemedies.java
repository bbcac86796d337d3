package keenward.core.electrical;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import keenward.core.electrical.CableCircuit.Wire;
import keenward.core.quantities.Conductor;

/**
 * Changes that lift the voltage at a device to its least, each computed by solving the changed
 * network: cores doubled, a thicker cable, a shorter one, or a supply nearer to the device.
 */
final class CableRemedies {
  private static final CableState JUDGED = CableState.EMPTY_IN_ALARM;
  // 2^-20 of a cable is less than a millimetre in a kilometre.
  private static final int HALVINGS = 20;

  private final CableCircuit circuit;
  private final int node;
  private final List<Wire> way;
  private final double leastVolts;

  private CableRemedies(CableCircuit circuit, int node, List<Wire> way, double leastVolts) {
    this.circuit = circuit;
    this.node = node;
    this.way = way;
    this.leastVolts = leastVolts;
  }

  /**
   * The remedies that are enough.
   *
   * @param node the device's node
   * @param way cables from the supply to it
   * @param leastVolts what it needs
   */
  static List<Remedy> of(CableCircuit circuit, int node, List<Wire> way, double leastVolts) {
    return new CableRemedies(circuit, node, way, leastVolts).find();
  }

  private List<Remedy> find() {
    List<Remedy> found = new ArrayList<>();
    Comparator<Wire> byResistance = Comparator.comparingDouble(wire -> wire.resistance().ohms());
    for (Wire wire : way.stream().sorted(byResistance.reversed()).toList()) {
      List<Remedy> ofCable = new ArrayList<>();
      doubled(wire).ifPresent(ofCable::add);
      thicker(wire).ifPresent(ofCable::add);
      shorter(wire).ifPresent(ofCable::add);
      found.addAll(ofCable);
      if (!ofCable.isEmpty()) {
        break;
      }
    }
    if (found.isEmpty()) {
      allThicker().ifPresent(found::add);
    }
    if (circuit.cells() * EndVoltage.VOLTS_A_CELL >= leastVolts) {
      found.add(
          new Remedy(
              "a supply of its own beside '" + circuit.nodes().get(node) + "'",
              circuit.cells() * EndVoltage.VOLTS_A_CELL));
    }
    return found;
  }

  private Optional<Remedy> doubled(Wire wire) {
    if (wire.resistance().run().coresEachWay() == 2) {
      return Optional.empty();
    }
    Wire changed = wire.with(wire.size(), metres(wire), true);
    return enough("two cores for each pole in " + wire.cable().name(), circuit.with(changed));
  }

  private Optional<Remedy> thicker(Wire wire) {
    for (Conductor size : ConductorSizes.above(wire.size())) {
      Optional<Remedy> remedy =
          enough(
              wire.cable().name() + " in " + size.written(),
              circuit.with(wire.with(size, metres(wire), isDoubled(wire))));
      if (remedy.isPresent()) {
        return remedy;
      }
    }
    return Optional.empty();
  }

  private Optional<Remedy> shorter(Wire wire) {
    double works = 0;
    double tooLong = metres(wire);
    for (int halving = 0; halving < HALVINGS; halving++) {
      double middle = (works + tooLong) / 2;
      if (isEnough(circuit.with(wire.with(wire.size(), middle, isDoubled(wire))))) {
        works = middle;
      } else {
        tooLong = middle;
      }
    }
    double metres = Math.floor(works);
    return metres >= 1
        ? enough(
            wire.cable().name() + " no longer than " + Figures.text(metres) + " m",
            circuit.with(wire.with(wire.size(), metres, isDoubled(wire))))
        : Optional.empty();
  }

  /** Every cable of the way one size thicker, two sizes, and so on. */
  private Optional<Remedy> allThicker() {
    CableCircuit changed = circuit;
    List<Wire> wires = way;
    while (true) {
      Optional<List<Wire>> next = each(wires);
      if (next.isEmpty()) {
        return Optional.empty();
      }
      wires = next.get();
      for (Wire wire : wires) {
        changed = changed.with(wire);
      }
      List<String> sizes =
          wires.stream().map(wire -> wire.cable().name() + " in " + wire.size().written()).toList();
      Optional<Remedy> remedy = enough(String.join(", ", sizes), changed);
      if (remedy.isPresent()) {
        return remedy;
      }
    }
  }

  private static Optional<List<Wire>> each(List<Wire> wires) {
    List<Wire> thicker = new ArrayList<>();
    boolean hasChanged = false;
    for (Wire wire : wires) {
      List<Conductor> above = ConductorSizes.above(wire.size());
      hasChanged |= !above.isEmpty();
      thicker.add(
          above.isEmpty() ? wire : wire.with(above.getFirst(), metres(wire), isDoubled(wire)));
    }
    return hasChanged ? Optional.of(thicker) : Optional.empty();
  }

  private Optional<Remedy> enough(String words, CableCircuit changed) {
    OptionalDouble volts = volts(changed);
    return volts.isPresent() && volts.getAsDouble() >= leastVolts
        ? Optional.of(new Remedy(words, volts.getAsDouble()))
        : Optional.empty();
  }

  private boolean isEnough(CableCircuit changed) {
    OptionalDouble volts = volts(changed);
    return volts.isPresent() && volts.getAsDouble() >= leastVolts;
  }

  private OptionalDouble volts(CableCircuit changed) {
    return changed
        .solve(JUDGED)
        .map(solved -> OptionalDouble.of(solved.volts(node)))
        .orElse(OptionalDouble.empty());
  }

  private static double metres(Wire wire) {
    return wire.resistance().run().metres();
  }

  private static boolean isDoubled(Wire wire) {
    return wire.resistance().run().coresEachWay() == 2;
  }
}
