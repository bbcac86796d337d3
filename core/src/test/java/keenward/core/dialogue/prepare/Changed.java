package keenward.core.dialogue.prepare;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import keenward.core.dialogue.order.Act;
import keenward.core.dialogue.order.Group;
import keenward.core.dialogue.order.Instruction;
import keenward.core.dialogue.order.WorkOrder;

/** Orders with something changed. */
final class Changed {
  private Changed() {}

  static WorkOrder acts(WorkOrder order, UnaryOperator<Act> change) {
    return steps(
        order,
        step ->
            new Instruction.Step(
                step.number(),
                step.screen(),
                step.now(),
                step.acts().stream().map(change).toList(),
                step.then(),
                step.thenScreen(),
                step.stored(),
                step.takesTenths(),
                step.mayWaitTenths(),
                step.whenLeftAlone(),
                step.whenPowerFails()));
  }

  static WorkOrder steps(WorkOrder order, UnaryOperator<Instruction.Step> change) {
    List<Group> groups = new ArrayList<>();
    for (Group group : order.groups()) {
      List<Instruction> instructions = new ArrayList<>();
      for (Instruction instruction : group.instructions()) {
        instructions.add(
            instruction instanceof Instruction.Step step ? change.apply(step) : instruction);
      }
      groups.add(
          new Group(
              group.part(),
              group.record(),
              group.recordNumber(),
              instructions,
              group.effort(),
              group.stop()));
    }
    return new WorkOrder(
        order.panel(),
        order.keypad(),
        groups,
        order.passing(),
        order.overwritten(),
        order.assumptions(),
        order.effort(),
        order.shortness(),
        order.whileOpen());
  }
}
