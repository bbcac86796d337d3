package keenward.core.electrical.network;

/** In which order the nodes of a network are eliminated, and what each step touches. */
final class Elimination {
  /** Every node but the supply. */
  final Ints order;

  /** For each step, and one beyond, where its neighbours start. */
  final Ints first;

  /** Nodes that were still there and joined to the eliminated one. */
  final Ints neighbour;

  /** The segments to them. */
  final Ints segment;

  /** For each step, where its pairs of neighbours start. */
  final Ints firstPair;

  /** Segments between two of the neighbours: first with second, first with third, ... */
  final Ints pair;

  Elimination(int nodes) {
    order = new Ints(nodes);
    first = new Ints(nodes);
    neighbour = new Ints(nodes);
    segment = new Ints(nodes);
    firstPair = new Ints(nodes);
    pair = new Ints(0);
  }
}
