package keenward.core.dialogue.machine;

import keenward.core.dialogue.description.Field;

/**
 * One place of the memory: a field, and the record where it is held by record.
 *
 * @param index place in {@link Memory}
 * @param field the field
 * @param record number of the record, or 0 for a single field
 */
public record Slot(int index, Field field, int record) {

  /** Full name with its record, such as {@code zone 4 kind}. */
  public String describe() {
    return field.byRecord()
        ? field.record() + " " + record + " " + field.localName()
        : field.name();
  }
}
