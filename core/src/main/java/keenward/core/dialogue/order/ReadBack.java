package keenward.core.dialogue.order;

import java.util.List;
import keenward.core.dialogue.machine.Slot;

/**
 * How to look at what a panel holds without storing anything.
 *
 * @param groups as in a {@link WorkOrder}; each step shows what the display must show when the
 *     planned memory is there
 * @param readAt for each field that is shown, where
 * @param notReadable fields that cannot be seen, or only by storing something, with the reason
 * @param effort what it takes
 */
public record ReadBack(
    List<Group> groups, List<Reading> readAt, List<Reason> notReadable, Effort effort) {
  public ReadBack {
    groups = List.copyOf(groups);
    readAt = List.copyOf(readAt);
    notReadable = List.copyOf(notReadable);
  }

  /**
   * Where a field is seen.
   *
   * @param slot the field
   * @param atStep number of the step after which the display shows it
   * @param lines what the display shows then
   */
  public record Reading(Slot slot, int atStep, List<String> lines) {
    public Reading {
      lines = List.copyOf(lines);
    }
  }
}
