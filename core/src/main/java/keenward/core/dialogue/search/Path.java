package keenward.core.dialogue.search;

import java.util.ArrayList;
import java.util.List;
import keenward.core.dialogue.machine.State;

/**
 * Moves in a row.
 *
 * @param from the state before them
 * @param edges the moves
 * @param end the state after them
 * @param cost what they cost, in the longest case
 */
record Path(State from, List<Edge> edges, State end, long cost) {
  Path {
    edges = List.copyOf(edges);
  }

  List<Item> items() {
    List<Item> items = new ArrayList<>();
    for (Edge edge : edges) {
      items.addAll(edge.items());
    }
    return items;
  }
}
