package keenward.core.dialogue.description;

import java.util.List;
import java.util.Optional;

/**
 * A field of the panel's memory.
 *
 * @param name full name: {@code kind} for a single field's own name, or {@code zone.kind} for a
 *     field of each zone
 * @param record name of its {@link RecordKind}, or empty for a single field
 * @param type what it may hold
 * @param initial what it holds when new, or {@link Value#nothing()}
 * @param onChange what else happens when it is stored with another value than before
 * @param onlyWhen when the field means anything at all
 * @param writeOnly whether no screen shows what it holds
 * @param from where its value comes from in the site plan, if anywhere
 */
public record Field(
    String name,
    String record,
    FieldType type,
    Value initial,
    List<Effect> onChange,
    Condition onlyWhen,
    boolean writeOnly,
    Optional<PlanSource> from) {
  public Field {
    onChange = List.copyOf(onChange);
  }

  /** Whether there is one for each record. */
  public boolean byRecord() {
    return !record.isEmpty();
  }

  /** The name within its record: {@code kind} of {@code zone.kind}. */
  public String localName() {
    return byRecord() ? name.substring(record.length() + 1) : name;
  }
}
