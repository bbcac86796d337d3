package keenward.core.dialogue.search;

import java.util.Optional;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.Value;
import keenward.core.dialogue.machine.Slot;
import keenward.core.dialogue.machine.TypedForm;
import keenward.core.dialogue.order.OrderWords;
import keenward.core.dialogue.order.Reason;

/** Whether fields can hold what is planned for them. */
final class Fit {
  private Fit() {}

  /** Why the slot cannot hold the value, if it cannot. */
  static Optional<Reason> refusal(Slot slot, Value value) {
    if (value.equals(slot.field().initial()) || fits(slot.field().type(), value)) {
      return Optional.empty();
    }
    return Optional.of(
        new Reason(
            Reason.Kind.OUT_OF_RANGE,
            Optional.of(slot),
            slot.describe() + " cannot hold " + OrderWords.value(slot, value) + ".",
            "Plan a value that the panel's description allows."));
  }

  private static boolean fits(FieldType type, Value value) {
    return switch (type) {
      case FieldType.Choice choice ->
          value instanceof Value.Word word
              && choice.options().stream().anyMatch(option -> option.word().equals(word.word()));
      case FieldType.OptionSet set ->
          value instanceof Value.Members members
              && (set.options().size() == 64 || members.bits() >>> set.options().size() == 0);
      case FieldType.WordSequence words ->
          value instanceof Value.Words list
              && list.words().size() <= words.most()
              && words.words().containsAll(list.words());
      case FieldType.Code code -> value instanceof Value.Secret;
      default ->
          TypedForm.write(type, value)
              .flatMap(typed -> TypedForm.read(type, typed))
              .filter(value::equals)
              .isPresent();
    };
  }
}
