package keenward.core.dialogue.description;

import java.util.Optional;

/**
 * A kind of numbered record: zones, users, partitions and the like.
 *
 * @param name name in the description, such as {@code zone}
 * @param first number of the first record
 * @param last number of the last record
 * @param from what of the site plan the records stand for, if anything
 */
public record RecordKind(String name, int first, int last, Optional<PlanRecords> from) {
  public RecordKind {
    if (first < 0 || last < first) {
      throw new IllegalArgumentException(name + " " + first + ".." + last);
    }
  }

  /** A kind that stands for nothing of the plan. */
  public RecordKind(String name, int first, int last) {
    this(name, first, last, Optional.empty());
  }

  /** How many records there are. */
  public int size() {
    return last - first + 1;
  }

  /** Whether {@code number} is a record of this kind. */
  public boolean contains(int number) {
    return number >= first && number <= last;
  }
}
