package keenward.core.electrical.network;

/**
 * In which order the nodes of a network are eliminated, and what each step touches.
 *
 * @param nodes number of nodes
 * @param segments number of segments, with those that eliminating adds
 * @param order every node but the supply
 * @param first for each step, and one beyond, where its neighbours start
 * @param neighbour nodes that were still there and joined to the eliminated one
 * @param segment the segments to them
 * @param firstPair for each step, where its pairs of neighbours start
 * @param pair segments between two of the neighbours, first with second, first with third, ...
 */
record Elimination(
    int nodes,
    int segments,
    int[] order,
    int[] first,
    int[] neighbour,
    int[] segment,
    int[] firstPair,
    int[] pair) {}
