package keenward.core.dialogue.order;

import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Slot;

/**
 * A field that the plan says nothing about and that changes on the way all the same: by a side
 * effect, or at a prompt that cannot be skipped.
 *
 * @param slot the field
 * @param before what it held
 * @param after what it holds in the end
 * @param atStep number of the step that changes it first
 */
public record PassingChange(Slot slot, Value before, Value after, int atStep) {

  /** Whether it ends as it was found. */
  public boolean putBack() {
    return before.known() && before.equals(after);
  }
}
