package keenward.core.electrical.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import keenward.core.electrical.Spice;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Voltages lost on the way to each node of random trees and rings, against ngspice; loads of
 * constant power included.
 */
class NetworkSpiceTest {
  private static final int NETWORKS = 240;
  private static final double SUPPLY_VOLTS = 12;

  @TempDir Path folder;

  @Test
  void voltagesAgreeWithASimulator() throws IOException, InterruptedException {
    Spice.assumeInstalled();
    Random random = new Random(20_261_128);
    List<String> net = new ArrayList<>();
    Map<String, Double> expected = new LinkedHashMap<>();
    for (int number = 0; number < NETWORKS; number++) {
      // One in six has rings, the rest are trees.
      RandomNetwork made =
          RandomNetwork.of(random, 2 + random.nextInt(14), number % 6 == 0 ? 2 : 0);
      draw(number, made, net);
      double[] volts = NetworkTest.volts(made.network(), SUPPLY_VOLTS, made.loads());
      for (int node = 1; node < made.nodes(); node++) {
        expected.put(name(number, node), volts[node]);
      }
    }

    Map<String, Double> volts = Spice.operatingPoint(folder, net, List.copyOf(expected.keySet()));

    expected.forEach((node, own) ->
        assertThat(volts.get(node))
            .as(node)
            .isCloseTo(own, within(1e-3 * (SUPPLY_VOLTS - own) + 1e-5)));
    assertThat(expected).hasSizeGreaterThan(1500);
  }

  private static String name(int network, int node) {
    return "n" + network + "x" + node;
  }

  private static void draw(int number, RandomNetwork made, List<String> net) {
    String own = number + "x";
    net.add("V" + number + " " + name(number, 0) + " 0 " + SUPPLY_VOLTS);
    for (int segment = 0; segment < made.segments().size(); segment++) {
      Segment each = made.segments().get(segment);
      net.add(
          "R%ss%d %s %s %s"
              .formatted(
                  own,
                  segment,
                  name(number, each.one()),
                  name(number, each.other()),
                  Spice.number(each.ohms())));
    }
    for (int node = 1; node < made.nodes(); node++) {
      String at = name(number, node);
      if (made.loads().amperes[node] > 0) {
        net.add(
            "I%si%d %s 0 %s".formatted(own, node, at, Spice.number(made.loads().amperes[node])));
      }
      if (made.loads().watts[node] > 0) {
        net.add(".nodeset v(%s)=%s".formatted(at, SUPPLY_VOLTS));
        net.add(
            "B%sb%d %s 0 I=%s/v(%s)"
                .formatted(own, node, at, Spice.number(made.loads().watts[node]), at));
      }
      if (made.loads().siemens[node] > 0) {
        net.add(
            "R%sg%d %s 0 %s"
                .formatted(own, node, at, Spice.number(1 / made.loads().siemens[node])));
      }
    }
  }
}
