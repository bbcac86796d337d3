package keenward.core.dialogue.order;

import java.util.ArrayList;
import java.util.List;

/**
 * What to press to bring a panel from found to planned.
 *
 * @param panel the panel's name
 * @param keypad kind of keypad that it is for
 * @param groups in order: the way in, group by group with a stopping place after each, the way out;
 *     empty where nothing needs to change
 * @param passing fields outside the plan that change on the way
 * @param overwritten fields overwritten unseen, each with consent
 * @param assumptions what it takes for granted
 * @param effort what it takes in all, in the longest case
 * @param shortness how near to the shortest it is
 * @param whileOpen what the panel does not do while programming is open, in its own words
 */
public record WorkOrder(
    String panel,
    String keypad,
    List<Group> groups,
    List<PassingChange> passing,
    List<UnseenOverwrite> overwritten,
    List<Assumption> assumptions,
    Effort effort,
    Shortness shortness,
    List<String> whileOpen) {
  public WorkOrder {
    groups = List.copyOf(groups);
    passing = List.copyOf(passing);
    overwritten = List.copyOf(overwritten);
    assumptions = List.copyOf(assumptions);
    whileOpen = List.copyOf(whileOpen);
  }

  /** Whether the panel already holds what was planned. */
  public boolean nothingToDo() {
    return groups.isEmpty();
  }

  /** All instructions of the order itself, group after group. */
  public List<Instruction> instructions() {
    List<Instruction> all = new ArrayList<>();
    for (Group group : groups) {
      all.addAll(group.instructions());
    }
    return all;
  }
}
