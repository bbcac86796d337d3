package keenward.core.dialogue.description;

import java.util.List;
import java.util.Map;

/** What typed digits or a typed code are for. */
public sealed interface Target {

  /** The field that it stores into, if any. */
  default List<FieldReference> stores() {
    return switch (this) {
      case ToField to -> List.of(to.field());
      case Repeat to -> List.of(to.field());
      case ToRecord to -> List.of();
      case ToLocation to -> List.of();
      case Aside to -> List.of();
      case Check to -> List.of();
      case ToItem to -> List.of();
    };
  }

  /** Stored into a field. */
  record ToField(FieldReference field) implements Target {}

  /** The number of the record that becomes the current one. */
  record ToRecord(String record) implements Target {}

  /** The number of a location. */
  record ToLocation() implements Target {}

  /** Kept aside until it is asked for again. */
  record Aside() implements Target {}

  /** Must equal what was kept aside; then stored into a field. */
  record Repeat(FieldReference field) implements Target {}

  /** Must equal what a field holds; nothing is stored. */
  record Check(FieldReference field) implements Target {}

  /** The number of an item, each with its own action. */
  record ToItem(Map<String, Action> items) implements Target {
    public ToItem {
      items = Ordered.copyOf(items);
    }
  }
}
