package keenward.core.dialogue.search;

import java.util.List;
import keenward.core.dialogue.machine.State;

/**
 * A move of the search.
 *
 * @param items what is done
 * @param after the state afterwards
 * @param cost what it costs, in the longest case
 */
record Edge(List<Item> items, State after, long cost) {
  Edge {
    items = List.copyOf(items);
  }
}
