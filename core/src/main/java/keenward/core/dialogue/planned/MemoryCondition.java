package keenward.core.dialogue.planned;

import java.util.List;
import keenward.core.dialogue.description.Condition;
import keenward.core.dialogue.description.FieldReference;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Memory;
import keenward.core.dialogue.machine.MemoryLayout;

/** Judges a condition over a memory alone, without a dialogue going on. */
public final class MemoryCondition {
  private MemoryCondition() {}

  /** Whether the condition may hold for a record; conditions on anything but fields may. */
  public static boolean mayHold(
      Condition condition, MemoryLayout layout, Memory memory, int record) {
    return possible(condition, layout, memory, record, true);
  }

  private static boolean possible(
      Condition condition, MemoryLayout layout, Memory memory, int record, boolean wanted) {
    return switch (condition) {
      case Condition.FieldIs is -> {
        if (!(is.field() instanceof FieldReference.Named named)
            || !layout.contains(named.field(), recordOf(layout, named.field(), record))) {
          yield true;
        }
        Value held = memory.get(layout.slot(named.field(), record));
        boolean some = false;
        boolean certain = false;
        for (Value value : is.values()) {
          some |= held.mayBe(value);
          certain |= held.certainly(value);
        }
        yield wanted ? some : !certain;
      }
      case Condition.Not not -> possible(not.condition(), layout, memory, record, !wanted);
      case Condition.All all ->
          wanted
              ? every(all.conditions(), layout, memory, record, true)
              : any(all.conditions(), layout, memory, record, false);
      case Condition.Any any ->
          wanted
              ? any(any.conditions(), layout, memory, record, true)
              : every(any.conditions(), layout, memory, record, false);
      default -> true;
    };
  }

  private static int recordOf(MemoryLayout layout, String field, int record) {
    return layout.contains(field, record) ? record : 0;
  }

  private static boolean every(
      List<Condition> conditions, MemoryLayout layout, Memory memory, int record, boolean wanted) {
    for (Condition condition : conditions) {
      if (!possible(condition, layout, memory, record, wanted)) {
        return false;
      }
    }
    return true;
  }

  private static boolean any(
      List<Condition> conditions, MemoryLayout layout, Memory memory, int record, boolean wanted) {
    for (Condition condition : conditions) {
      if (possible(condition, layout, memory, record, wanted)) {
        return true;
      }
    }
    return false;
  }
}
