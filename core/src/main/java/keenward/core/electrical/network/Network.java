package keenward.core.electrical.network;

import java.util.Arrays;
import java.util.List;

/**
 * Segments between numbered nodes, fed at node 0. Its order of elimination is found once; it can
 * then be solved for many loads.
 *
 * <p>Method. Nodes are eliminated one by one by star-mesh transformation, fewest neighbours first:
 * a tree is eaten up from its leaves without any new segment, a ring costs a few. Conductance to
 * earth is carried beside the segments, so that nothing is subtracted and no digit is lost however
 * short a cable. Loads of constant power are replaced by their tangents (Newton's method), starting
 * with every node at the voltage of the supply. The current of such a load is convex in its voltage
 * and the matrix of the tangents is an M-matrix wherever voltages are above a solution, so the
 * rounds fall monotonically onto the solution with the highest voltages, and a pivot that is not
 * positive proves that there is no solution (monotone Newton theorem: Ortega and Rheinboldt,
 * Iterative Solution of Nonlinear Equations in Several Variables, 13.3; from memory).
 */
public final class Network {
  /** Rounds stop when no node moves by more than this, in volts. */
  public static final double TOLERANCE_VOLTS = 1e-9;

  // At the very edge of collapse each round halves the distance: 40 rounds are 12 digits.
  private static final int MOST_ROUNDS = 100;
  static final int SUPPLY = 0;

  private final int nodes;
  private final double[] conductance;
  private final int[] order;
  // For step s: its neighbours and their segments are at first[s] to first[s + 1], and the segments
  // of each pair of its neighbours start at firstPair[s].
  private final int[] first;
  private final int[] neighbour;
  private final int[] segment;
  private final int[] firstPair;
  private final int[] pair;

  private Network(int nodes, Elimination elimination, double[] conductance) {
    this.nodes = nodes;
    this.conductance = conductance;
    order = elimination.order.toArray();
    first = elimination.first.toArray();
    neighbour = elimination.neighbour.toArray();
    segment = elimination.segment.toArray();
    firstPair = elimination.firstPair.toArray();
    pair = elimination.pair.toArray();
  }

  /**
   * A network.
   *
   * @param nodes number of nodes, the supply included
   * @param segments segments between nodes 0 to {@code nodes - 1}; several between the same two
   *     nodes lie side by side
   * @throws IllegalArgumentException if a node does not exist or no segments lead to it
   */
  public static Network of(int nodes, List<Segment> segments) {
    Graph graph = new Graph(nodes, segments.size());
    double[] conductance = new double[segments.size()];
    for (Segment each : segments) {
      conductance[graph.join(each.one(), each.other())] += 1 / each.ohms();
    }
    Elimination elimination = graph.eliminate();
    return new Network(nodes, elimination, Arrays.copyOf(conductance, graph.segments()));
  }

  /** Number of nodes, the supply included. */
  public int nodes() {
    return nodes;
  }

  /**
   * Solves the network.
   *
   * @param supplyVolts voltage of node 0, above 0 V
   * @param loads loads of its nodes; those of node 0 take nothing from the segments
   */
  public NetworkState solve(double supplyVolts, NodeLoads loads) {
    if (loads.amperes.length != nodes || !(supplyVolts > 0)) {
      throw new IllegalArgumentException("expected a voltage above 0 V and a load for each node");
    }
    boolean isLinear = isLinear(loads);
    double[] volts = new double[nodes];
    Arrays.fill(volts, supplyVolts);
    double[] mesh = new double[conductance.length];
    double[] toEarth = new double[nodes];
    double[] drawn = new double[nodes];
    double[] pivot = new double[nodes];
    for (int round = 1; round <= MOST_ROUNDS; round++) {
      for (int node = 0; node < nodes; node++) {
        double perVolt = loads.watts[node] / volts[node];
        toEarth[node] = loads.siemens[node] - perVolt / volts[node];
        drawn[node] = loads.amperes[node] + 2 * perVolt;
      }
      System.arraycopy(conductance, 0, mesh, 0, conductance.length);
      if (!eliminate(mesh, toEarth, drawn, pivot)) {
        return new NetworkState.Collapsed();
      }
      double moved = substitute(mesh, drawn, pivot, volts);
      if (Double.isNaN(moved)) {
        return new NetworkState.Collapsed();
      }
      if (isLinear || moved <= TOLERANCE_VOLTS) {
        return new NetworkState.Steady(volts, round);
      }
    }
    return new NetworkState.Collapsed();
  }

  private static boolean isLinear(NodeLoads loads) {
    for (double each : loads.watts) {
      if (each != 0) {
        return false;
      }
    }
    return true;
  }

  /** Eliminates every node but the supply; whether every pivot was positive. */
  private boolean eliminate(double[] mesh, double[] toEarth, double[] drawn, double[] pivot) {
    for (int step = 0; step < order.length; step++) {
      int node = order[step];
      int from = first[step];
      int until = first[step + 1];
      double sum = toEarth[node];
      for (int at = from; at < until; at++) {
        sum += mesh[segment[at]];
      }
      if (!(sum > 0)) {
        return false;
      }
      pivot[node] = sum;
      int joined = firstPair[step];
      for (int at = from; at < until; at++) {
        double share = mesh[segment[at]] / sum;
        toEarth[neighbour[at]] += share * toEarth[node];
        drawn[neighbour[at]] += share * drawn[node];
        for (int further = at + 1; further < until; further++) {
          mesh[pair[joined++]] += share * mesh[segment[further]];
        }
      }
    }
    return true;
  }

  /** Finds the voltages and how far the farthest moved; NaN when one is not above 0 V. */
  private double substitute(double[] mesh, double[] drawn, double[] pivot, double[] volts) {
    double moved = 0;
    for (int step = order.length - 1; step >= 0; step--) {
      int node = order[step];
      double sum = -drawn[node];
      for (int at = first[step]; at < first[step + 1]; at++) {
        sum += mesh[segment[at]] * volts[neighbour[at]];
      }
      double found = sum / pivot[node];
      if (!(found > 0)) {
        return Double.NaN;
      }
      moved = Math.max(moved, Math.abs(found - volts[node]));
      volts[node] = found;
    }
    return moved;
  }
}
