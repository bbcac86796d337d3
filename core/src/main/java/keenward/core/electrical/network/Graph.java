package keenward.core.electrical.network;

import java.util.Arrays;

/** Which nodes are joined by which segment; finds the order of elimination. */
final class Graph {
  private final int nodes;
  private final Ints[] neighbours;
  private final Ints[] segments;
  private final int[] degree;
  private final boolean[] isGone;
  private int segmentCount;

  Graph(int nodes) {
    if (nodes < 1) {
      throw new IllegalArgumentException("expected at least the node of the supply");
    }
    this.nodes = nodes;
    neighbours = new Ints[nodes];
    segments = new Ints[nodes];
    Arrays.setAll(neighbours, node -> new Ints());
    Arrays.setAll(segments, node -> new Ints());
    degree = new int[nodes];
    isGone = new boolean[nodes];
  }

  /** Number of the segment between two nodes, new where there is none yet. */
  int join(int one, int other) {
    if (one < 0 || other < 0 || one >= nodes || other >= nodes) {
      throw new IllegalArgumentException("expected nodes from 0 to " + (nodes - 1));
    }
    boolean oneHasFewer = neighbours[one].size() < neighbours[other].size();
    int searched = oneHasFewer ? one : other;
    int sought = oneHasFewer ? other : one;
    for (int at = 0; at < neighbours[searched].size(); at++) {
      if (neighbours[searched].get(at) == sought) {
        return segments[searched].get(at);
      }
    }
    int number = segmentCount++;
    attach(one, other, number);
    attach(other, one, number);
    return number;
  }

  private void attach(int node, int neighbour, int number) {
    neighbours[node].add(neighbour);
    segments[node].add(number);
    degree[node]++;
  }

  void requireConnected() {
    boolean[] isReached = new boolean[nodes];
    Ints next = new Ints();
    next.add(Network.SUPPLY);
    isReached[Network.SUPPLY] = true;
    int reached = 1;
    while (next.size() > 0) {
      Ints around = neighbours[next.removeLast()];
      for (int at = 0; at < around.size(); at++) {
        int node = around.get(at);
        if (!isReached[node]) {
          isReached[node] = true;
          reached++;
          next.add(node);
        }
      }
    }
    if (reached < nodes) {
      throw new IllegalArgumentException(
          "expected segments to every node; " + (nodes - reached) + " cannot be reached");
    }
  }

  /** Takes the nodes away, always one with the fewest neighbours left. */
  Elimination eliminate() {
    // waiting[d] holds nodes that had d neighbours when put there; what has changed since is
    // skipped.
    Ints[] waiting = new Ints[nodes];
    for (int node = 1; node < nodes; node++) {
      wait(waiting, node);
    }
    Elimination steps = new Elimination();
    Ints neighbour = steps.neighbour;
    int fewest = 0;
    while (steps.order.size() < nodes - 1) {
      while (waiting[fewest] == null || waiting[fewest].size() == 0) {
        fewest++;
      }
      int node = waiting[fewest].removeLast();
      if (isGone[node] || degree[node] != fewest) {
        continue;
      }
      isGone[node] = true;
      steps.order.add(node);
      int from = neighbour.size();
      steps.first.add(from);
      steps.firstPair.add(steps.pair.size());
      for (int at = 0; at < neighbours[node].size(); at++) {
        if (!isGone[neighbours[node].get(at)]) {
          neighbour.add(neighbours[node].get(at));
          steps.segment.add(segments[node].get(at));
        }
      }
      for (int one = from; one < neighbour.size(); one++) {
        for (int other = one + 1; other < neighbour.size(); other++) {
          steps.pair.add(join(neighbour.get(one), neighbour.get(other)));
        }
      }
      for (int at = from; at < neighbour.size(); at++) {
        int left = neighbour.get(at);
        degree[left]--;
        if (left != Network.SUPPLY) {
          wait(waiting, left);
          fewest = Math.min(fewest, degree[left]);
        }
      }
    }
    steps.first.add(neighbour.size());
    return steps;
  }

  /** Number of segments, with those that eliminating has added. */
  int segments() {
    return segmentCount;
  }

  private void wait(Ints[] waiting, int node) {
    int count = degree[node];
    if (waiting[count] == null) {
      waiting[count] = new Ints();
    }
    waiting[count].add(node);
  }
}
