package keenward.core.dialogue.machine;

import java.util.ArrayList;
import java.util.List;
import keenward.core.dialogue.description.FieldType;
import keenward.core.dialogue.description.Value;

/** All values of a type, where they can be listed. */
final class Completions {
  private Completions() {}

  static List<Value> of(FieldType type, int limit) {
    return switch (type) {
      case FieldType.Choice choice when choice.options().size() <= limit -> scrolled(type);
      case FieldType.WholeNumber number when Scrolled.size(number) <= limit -> scrolled(type);
      case FieldType.OptionSet set
          when set.options().size() < 31 && 1 << set.options().size() <= limit -> {
        List<Value> values = new ArrayList<>();
        for (long bits = 0; bits < 1L << set.options().size(); bits++) {
          values.add(new Value.Members(bits));
        }
        yield List.copyOf(values);
      }
      default -> List.of();
    };
  }

  private static List<Value> scrolled(FieldType type) {
    List<Value> values = new ArrayList<>();
    for (int position = 0; position < Scrolled.size(type); position++) {
      values.add(Scrolled.at(type, position));
    }
    return List.copyOf(values);
  }
}
