package keenward.core.electrical.network;

/** In which order the nodes of a network are eliminated, and what each step touches. */
final class Elimination {
  /** Every node but the supply. */
  final Ints order = new Ints();

  /** For each step, and one beyond, where its neighbours start. */
  final Ints first = new Ints();

  /** Nodes that were still there and joined to the eliminated one. */
  final Ints neighbour = new Ints();

  /** The segments to them. */
  final Ints segment = new Ints();

  /** For each step, where its pairs of neighbours start. */
  final Ints firstPair = new Ints();

  /** Segments between two of the neighbours: first with second, first with third, ... */
  final Ints pair = new Ints();
}
