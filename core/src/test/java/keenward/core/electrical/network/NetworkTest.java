package keenward.core.electrical.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NetworkTest {

  @Test
  void aCurrentAtTheEndOfACable() {
    Network network = Network.of(2, List.of(new Segment(0, 1, 2)));

    // 12 V - 2 ohm x 0.5 A = 11 V
    assertThat(volts(network, 12, new NodeLoads(2).current(1, 0.5))[1]).isEqualTo(11);
  }

  @Test
  void aResistanceAtTheEndOfACableDividesTheVoltage() {
    Network network = Network.of(2, List.of(new Segment(0, 1, 2)));

    // 12 V x 22 ohm / (22 + 2) ohm = 11 V
    assertThat(volts(network, 12, new NodeLoads(2).conductance(1, 1.0 / 22))[1])
        .isCloseTo(11, within(1e-12));
  }

  @Test
  void aPowerTakesTheUpperOfTwoVoltages() {
    Network network = Network.of(2, List.of(new Segment(0, 1, 2)));

    // V = 12 - 2 x 10 / V has the solutions 10 V and 2 V
    assertThat(volts(network, 12, new NodeLoads(2).power(1, 10))[1]).isCloseTo(10, within(1e-9));
  }

  /** The most that a resistance R passes on from E is E^2 / 4 R: matched load, circuit theory. */
  @Test
  void collapsesJustAboveTheMatchedLoadAndNotBelow() {
    Network network = Network.of(2, List.of(new Segment(0, 1, 2)));
    double most = 12 * 12 / (4 * 2.0);

    assertThat(volts(network, 12, new NodeLoads(2).power(1, most * (1 - 1e-6)))[1])
        .isCloseTo(6 * (1 + 1e-3), within(1e-6));
    assertThat(network.solve(12, new NodeLoads(2).power(1, most * (1 + 1e-6))))
        .isEqualTo(new NetworkState.Collapsed());
  }

  @Test
  void moreCurrentThanTheCablePassesIsACollapse() {
    Network network = Network.of(2, List.of(new Segment(0, 1, 2)));

    assertThat(network.solve(12, new NodeLoads(2).current(1, 6.01)))
        .isEqualTo(new NetworkState.Collapsed());
  }

  @Test
  void aRingFeedsFromBothSides() {
    // A load in the middle of a ring of 4 ohm sees two halves side by side: 1 ohm.
    Network ring = Network.of(2, List.of(new Segment(0, 1, 2), new Segment(1, 0, 2)));

    assertThat(volts(ring, 12, new NodeLoads(2).current(1, 1))[1]).isEqualTo(11);
  }

  /** Wheatstone's bridge: balanced, so that its middle carries nothing. */
  @Test
  void aBalancedBridgeCarriesNothing() {
    Network bridge =
        Network.of(
            5,
            List.of(
                new Segment(0, 1, 10),
                new Segment(0, 2, 20),
                new Segment(1, 2, 5),
                new Segment(1, 3, 30),
                new Segment(2, 3, 60),
                new Segment(3, 4, 1)));

    double[] volts = volts(bridge, 12, new NodeLoads(5).current(4, 0.1));

    assertThat(volts[1]).isCloseTo(volts[2], within(1e-12));
    // 40 ohm beside 80 ohm, then 1 ohm: 12 V - (26 2/3 + 1) ohm x 0.1 A
    assertThat(volts[4]).isCloseTo(12 - 0.1 * (80.0 / 3 + 1), within(1e-12));
  }

  /** Kirchhoff's current law at every node, whatever the shape. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 3, 40})
  void whatArrivesIsDrawn(int rings) {
    long seed = 20_261_127L + rings;
    Random random = new Random(seed);
    for (int round = 0; round < 100; round++) {
      RandomNetwork made = RandomNetwork.of(random, 2 + random.nextInt(120), rings);
      double[] volts = volts(made.network(), 12, made.loads());
      for (int node = 1; node < made.nodes(); node++) {
        assertThat(made.leftOver(node, volts))
            .as("seed %d round %d node %d", seed, round, node)
            .isCloseTo(0, within(1e-9));
        assertThat(volts[node]).isPositive().isLessThanOrEqualTo(12 + 1e-12);
      }
    }
  }

  /** A cable of a hand's width does not cost digits of the long ones beyond it. */
  @Test
  void veryUnlikeResistancesKeepTheirDigits() {
    List<Segment> segments = new ArrayList<>();
    int nodes = 1001;
    for (int node = 1; node < nodes; node++) {
      segments.add(new Segment(node - 1, node, node % 2 == 0 ? 1e-9 : 1));
    }
    double[] volts =
        volts(Network.of(nodes, segments), 12, new NodeLoads(nodes).current(1000, 0.01));

    assertThat(volts[1000]).isCloseTo(12 - 0.01 * (500 + 500e-9), within(1e-12));
  }

  @Test
  void aDeepTreeAndAStarAreSolved() {
    int nodes = 20_000;
    List<Segment> chain = new ArrayList<>();
    List<Segment> star = new ArrayList<>();
    for (int node = 1; node < nodes; node++) {
      chain.add(new Segment(node - 1, node, 1e-4));
      star.add(new Segment(0, node, 1));
    }

    assertThat(volts(Network.of(nodes, chain), 12, new NodeLoads(nodes).current(nodes - 1, 1)))
        .satisfies(
            volts -> assertThat(volts[nodes - 1]).isCloseTo(12 - 1e-4 * (nodes - 1), within(1e-9)));
    assertThat(volts(Network.of(nodes, star), 12, new NodeLoads(nodes).current(7, 1))[7])
        .isEqualTo(11);
  }

  @Test
  void moreLoadNeverLiftsAVoltage() {
    Random random = new Random(60_228);
    for (int round = 0; round < 200; round++) {
      RandomNetwork made = RandomNetwork.of(random, 2 + random.nextInt(30), round % 3);
      double[] before = volts(made.network(), 12, made.loads());
      int node = 1 + random.nextInt(made.nodes() - 1);
      double[] after = volts(made.network(), 12, made.loads().power(node, 0.05));
      for (int each = 0; each < made.nodes(); each++) {
        assertThat(after[each]).isLessThanOrEqualTo(before[each] + 1e-12);
      }
    }
  }

  @Test
  void refusesWhatIsNoNetwork() {
    assertThatThrownBy(() -> new Segment(1, 1, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Segment(0, 1, 0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Segment(0, 1, -2)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new Segment(0, 1, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Network.of(3, List.of(new Segment(1, 2, 1))))
        .hasMessageContaining("cannot be reached");
    assertThatThrownBy(() -> Network.of(2, List.of())).hasMessageContaining("1 cannot be reached");
    assertThatThrownBy(() ->
            Network.of(
                5,
                List.of(
                    new Segment(0, 1, 1),
                    new Segment(2, 3, 1),
                    new Segment(3, 4, 1),
                    new Segment(4, 2, 1))))
        .hasMessageContaining("cannot be reached");
    assertThatThrownBy(() -> Network.of(2, List.of(new Segment(0, 2, 1))))
        .hasMessageContaining("nodes from 0 to 1");
    assertThatThrownBy(() -> new NodeLoads(1).current(0, -1))
        .isInstanceOf(IllegalArgumentException.class);
    Network alone = Network.of(1, List.of());
    assertThatThrownBy(() -> alone.solve(0, new NodeLoads(1)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> alone.solve(12, new NodeLoads(2)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  static double[] volts(Network network, double supplyVolts, NodeLoads loads) {
    NetworkState state = network.solve(supplyVolts, loads);
    assertThat(state).isInstanceOf(NetworkState.Steady.class);
    NetworkState.Steady steady = (NetworkState.Steady) state;
    return IntStream.range(0, network.nodes()).mapToDouble(steady::volts).toArray();
  }
}
