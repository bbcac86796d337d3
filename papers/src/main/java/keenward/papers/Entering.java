package keenward.papers;

import java.util.List;
import keenward.core.dialogue.order.Proof;
import keenward.core.dialogue.order.WorkOrder;
import keenward.core.dialogue.sheet.EntrySheet;

/** How the plan gets into the panel. */
public sealed interface Entering {

  /**
   * By a work order.
   *
   * @param order the order
   * @param proof verdict of the replay; an order that it refutes is printed as unproved
   * @param hash hash of plan, found state, description, keypad, steps and program version
   * @param found what the panel was taken to hold, in words
   */
  record ByOrder(WorkOrder order, Proof proof, String hash, String found) implements Entering {}

  /**
   * By hand, unproved.
   *
   * @param sheet the values
   * @param why why there is no order
   */
  record ByHand(EntrySheet sheet, List<Obstacle> why) implements Entering {
    public ByHand {
      why = List.copyOf(why);
    }
  }
}
