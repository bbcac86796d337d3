package keenward.core.electrical.network;

import java.util.Arrays;

/**
 * Which nodes are joined by which segment; finds the order of elimination. Neighbours are linked
 * lists in flat arrays: entry 2s leads from one end of segment s, entry 2s + 1 from the other.
 */
final class Graph {
  private static final int NONE = -1;

  private final int nodes;
  private final int[] firstEntry;
  private final Ints nextEntry;
  private final Ints target;
  private final int[] degree;
  private final boolean[] isGone;

  /** Nodes that have had one neighbour left; what has changed since is skipped. */
  private final Ints leaves = new Ints(16);

  Graph(int nodes, int expectedSegments) {
    if (nodes < 1) {
      throw new IllegalArgumentException("expected at least the node of the supply");
    }
    this.nodes = nodes;
    firstEntry = new int[nodes];
    Arrays.fill(firstEntry, NONE);
    nextEntry = new Ints(2 * expectedSegments);
    target = new Ints(2 * expectedSegments);
    degree = new int[nodes];
    isGone = new boolean[nodes];
  }

  /** Number of segments, with those that eliminating has added. */
  int segments() {
    return target.size() / 2;
  }

  /** Number of the segment between two nodes, new where there is none yet. */
  int join(int one, int other) {
    if (one < 0 || other < 0 || one >= nodes || other >= nodes) {
      throw new IllegalArgumentException("expected nodes from 0 to " + (nodes - 1));
    }
    boolean oneHasFewer = degree[one] < degree[other];
    int sought = oneHasFewer ? other : one;
    for (int entry = firstEntry[oneHasFewer ? one : other];
        entry != NONE;
        entry = nextEntry.get(entry)) {
      if (target.get(entry) == sought) {
        return entry / 2;
      }
    }
    attach(one, other);
    attach(other, one);
    return segments() - 1;
  }

  private void attach(int node, int neighbour) {
    nextEntry.add(firstEntry[node]);
    firstEntry[node] = target.size();
    target.add(neighbour);
    degree[node]++;
  }

  /**
   * Takes the nodes away, always one with the fewest neighbours left.
   *
   * @throws IllegalArgumentException if no segments lead from some node to the supply: the last
   *     node of its island is left without neighbours
   */
  Elimination eliminate() {
    Elimination steps = new Elimination(nodes);
    for (int node = 1; node < nodes; node++) {
      noteLeaf(node);
    }
    while (steps.order.size() < nodes - 1) {
      int node = leaves.size() > 0 ? leaves.removeLast() : withFewest();
      if (!isGone[node]) {
        eliminate(node, steps);
      }
    }
    steps.first.add(steps.neighbour.size());
    return steps;
  }

  private void eliminate(int node, Elimination steps) {
    isGone[node] = true;
    int from = steps.neighbour.size();
    steps.order.add(node);
    steps.first.add(from);
    steps.firstPair.add(steps.pair.size());
    for (int entry = firstEntry[node]; entry != NONE; entry = nextEntry.get(entry)) {
      if (!isGone[target.get(entry)]) {
        steps.neighbour.add(target.get(entry));
        steps.segment.add(entry / 2);
      }
    }
    int until = steps.neighbour.size();
    for (int one = from; one < until; one++) {
      for (int other = one + 1; other < until; other++) {
        steps.pair.add(join(steps.neighbour.get(one), steps.neighbour.get(other)));
      }
    }
    for (int at = from; at < until; at++) {
      int left = steps.neighbour.get(at);
      degree[left]--;
      noteLeaf(left);
    }
  }

  private void noteLeaf(int node) {
    if (degree[node] <= 1 && node != Network.SUPPLY) {
      if (degree[node] == 0) {
        throw new IllegalArgumentException(
            "expected segments to every node; " + node + " cannot be reached");
      }
      leaves.add(node);
    }
  }

  /** Only rings are left: few nodes, so that looking at each is cheap. */
  private int withFewest() {
    int found = NONE;
    for (int node = 1; node < nodes; node++) {
      if (!isGone[node] && (found == NONE || degree[node] < degree[found])) {
        found = node;
      }
    }
    return found;
  }
}
