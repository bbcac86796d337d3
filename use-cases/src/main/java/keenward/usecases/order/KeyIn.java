package keenward.usecases.order;

import java.util.List;
import keenward.core.dialogue.description.PanelDescription;
import keenward.core.dialogue.order.Proof;
import keenward.core.dialogue.order.Reason;
import keenward.core.dialogue.order.WorkOrder;
import keenward.core.dialogue.planned.PlannedMemory;
import keenward.core.dialogue.sheet.EntrySheet;

/** How the plan gets into the panel. */
public sealed interface KeyIn {

  /**
   * A proved order.
   *
   * @param description the panel description
   * @param keypad kind of keypad in use
   * @param found what the panel was taken to hold, in words
   * @param order the order
   * @param proof verdict of the replay
   * @param hash hash of plan memory, found state, description, keypad, steps and program version
   * @param planned what the plan wants of the panel, and what the panel cannot hold
   */
  record Ordered(
      PanelDescription description,
      String keypad,
      String found,
      WorkOrder order,
      Proof proof,
      String hash,
      PlannedMemory planned)
      implements KeyIn {}

  /**
   * No order could be made or proved.
   *
   * @param description the panel description
   * @param keypad kind of keypad in use
   * @param reasons why
   * @param planned what the plan wants of the panel
   */
  record Refused(
      PanelDescription description, String keypad, List<Reason> reasons, PlannedMemory planned)
      implements KeyIn {
    public Refused {
      reasons = List.copyOf(reasons);
    }
  }

  /**
   * The panel has no description: values to enter by hand, unproved.
   *
   * @param sheet the values
   * @param why why there is no order
   * @param remedy what would bring one
   */
  record ByHand(EntrySheet sheet, String why, String remedy) implements KeyIn {}
}
