package keenward.core.dialogue.search;

import java.util.List;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.State;

/**
 * A move whose result depends on a value that is not known, and differs in more than memory: each
 * case has to find its own way on.
 *
 * @param before what is done before one looks; empty where the value is shown already
 * @param slot the slot of unknown value
 * @param cases the cases, each with the state in it
 * @param cost what {@code before} costs
 */
record Fork(List<Item> before, Slot slot, List<Prong> cases, long cost) {
  Fork {
    before = List.copyOf(before);
    cases = List.copyOf(cases);
  }

  /**
   * One case.
   *
   * @param values what the slot holds; empty for everything else
   */
  record Prong(List<Value> values, State state) {
    Prong {
      values = List.copyOf(values);
    }
  }
}
