package keenward.core.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import keenward.core.plan.Cable;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Fact;
import keenward.core.plan.PlanBuilder;
import keenward.core.quantities.Conductor;
import keenward.core.quantities.Length;
import org.junit.jupiter.api.Test;

class CableTreesTest {
  private static final List<String> SIZES = List.of("0.22 mm2", "0.5 mm2", "22 AWG", "18 AWG");

  private record Tree(List<Integer> parent, List<Double> loopOhms, List<Integer> milliamps) {
    Set<Integer> path(int node) {
      Set<Integer> path = new HashSet<>();
      for (int at = node; at >= 0; at = parent.get(at)) {
        path.add(at);
      }
      return path;
    }

    /**
     * Superposition: each load's current times the resistance that its path shares with the node's.
     */
    double drop(int node) {
      double drop = 0;
      for (int load = 0; load < parent.size(); load++) {
        Set<Integer> shared = path(node);
        shared.retainAll(path(load));
        for (int cable : shared) {
          drop += loopOhms.get(cable) * milliamps.get(load) / 1000;
        }
      }
      return drop;
    }
  }

  /**
   * Superposition (a theorem of linear circuits) gives the same voltages as following the cables.
   */
  @Test
  void randomTreesAgreeWithSuperposition() {
    long seed = 485L;
    Random random = new Random(seed);
    for (int round = 0; round < 100; round++) {
      int nodes = 1 + random.nextInt(15);
      List<Integer> parent = new ArrayList<>();
      List<Double> loopOhms = new ArrayList<>();
      List<Integer> milliamps = new ArrayList<>();
      PlanBuilder plan = PlanBuilder.site().supply("Main", main -> main.voltage("13.6 V"));
      for (int node = 0; node < nodes; node++) {
        int before = random.nextInt(node + 1) - 1;
        parent.add(before);
        int metres = 1 + random.nextInt(10);
        String size = SIZES.get(random.nextInt(SIZES.size()));
        boolean doubled = random.nextBoolean();
        int current = random.nextInt(60);
        milliamps.add(current);
        Conductor conductor = Conductor.parse(size).find().orElseThrow();
        double ohms = ConductorResistance.of(conductor).orElseThrow().at(40).ohmsPerKilometre();
        loopOhms.add(2 * metres * ohms / 1000 / (doubled ? 2 : 1));
        plan.device(
            "D" + node,
            DeviceKind.SIREN,
            device -> device.wired().supply("Main").draws("0 mA", current + " mA"));
        plan.cable(
            new Cable(
                "C" + node,
                before < 0 ? "Main" : "D" + before,
                "D" + node,
                Fact.of(Length.parse(metres + " m").find().orElseThrow()),
                Fact.of(conductor),
                Fact.of(doubled)));
      }
      Tree tree = new Tree(parent, loopOhms, milliamps);
      List<CableRun> runs = PowerAssessment.of(plan.build()).cableRuns();
      assertThat(runs).hasSize(nodes);
      for (CableRun run : runs) {
        int node = Integer.parseInt(run.device().name().substring(1));
        assertThat(run.volts().value())
            .as("seed %d round %d node %d", seed, round, node)
            .isCloseTo(10.5 - tree.drop(node), within(1e-9));
      }
    }
  }
}
