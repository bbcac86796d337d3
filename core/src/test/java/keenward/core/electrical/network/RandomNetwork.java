package keenward.core.electrical.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** A tree, with some rings if wished, and loads of all kinds that it can carry. */
record RandomNetwork(int nodes, List<Segment> segments, NodeLoads loads) {

  static RandomNetwork of(Random random, int nodes, int rings) {
    List<Segment> segments = new ArrayList<>();
    NodeLoads loads = new NodeLoads(nodes);
    for (int node = 1; node < nodes; node++) {
      segments.add(segment(random, random.nextInt(node), node));
      switch (random.nextInt(4)) {
        case 0 -> loads.current(node, random.nextDouble() * 0.5 / nodes);
        case 1 -> loads.power(node, random.nextDouble() * 5 / nodes);
        case 2 -> loads.conductance(node, random.nextDouble() * 0.05 / nodes);
        default -> {
          // a joint box
        }
      }
    }
    for (int ring = 0; ring < rings && nodes > 2; ring++) {
      int one = random.nextInt(nodes);
      int other = (one + 1 + random.nextInt(nodes - 1)) % nodes;
      segments.add(segment(random, one, other));
    }
    return new RandomNetwork(nodes, segments, loads);
  }

  private static Segment segment(Random random, int one, int other) {
    return new Segment(one, other, 0.001 + 5 * random.nextDouble());
  }

  Network network() {
    return Network.of(nodes, segments);
  }

  /** Current that arrives at a node through its segments, less what its loads draw. */
  double leftOver(int node, double[] volts) {
    double amperes = 0;
    for (Segment each : segments) {
      if (each.one() == node || each.other() == node) {
        int far = each.one() == node ? each.other() : each.one();
        amperes += (volts[far] - volts[node]) / each.ohms();
      }
    }
    return amperes - loads.amperesAt(node, volts[node]);
  }
}
