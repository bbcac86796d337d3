package keenward.core.dialogue.order;

import java.util.List;

/** An order with its proof, or the reasons why there is none. */
public sealed interface Prepared {

  /**
   * An order that was replayed and does what it should.
   *
   * @param canonical text that fixes plan, found memory, description, keypad and every step; the
   *     proof's hash is taken of it
   */
  record Ready(WorkOrder order, Proof proof, String canonical) implements Prepared {}

  /** There is no order, and no part of one. */
  record Refused(List<Reason> reasons) implements Prepared {
    public Refused {
      reasons = List.copyOf(reasons);
    }
  }
}
