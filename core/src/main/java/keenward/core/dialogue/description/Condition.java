package keenward.core.dialogue.description;

import java.util.List;

/** When something holds, judged in a state of the dialogue. */
public sealed interface Condition {

  /** Always. */
  Condition ALWAYS = new All(List.of());

  /** The field holds one of {@code values}. */
  record FieldIs(FieldReference field, List<Value> values) implements Condition {
    public FieldIs {
      values = List.copyOf(values);
    }
  }

  /** The current record of a kind is this number. */
  record RecordIs(String record, int number) implements Condition {}

  /** At most this long since power came back. */
  record SincePowerUp(int withinTenths) implements Condition {}

  /** Programming is locked after a wrong way of leaving. */
  record Locked() implements Condition {}

  /** The key was pressed on a keypad of this kind. */
  record OnKeypad(String keypad) implements Condition {}

  /** The other condition does not hold. */
  record Not(Condition condition) implements Condition {}

  /** All of these hold; an empty list always does. */
  record All(List<Condition> conditions) implements Condition {
    public All {
      conditions = List.copyOf(conditions);
    }
  }

  /** At least one of these holds. */
  record Any(List<Condition> conditions) implements Condition {
    public Any {
      conditions = List.copyOf(conditions);
    }
  }
}
