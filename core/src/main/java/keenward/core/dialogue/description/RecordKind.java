package keenward.core.dialogue.description;

/**
 * A kind of numbered record: zones, users, partitions and the like.
 *
 * @param name name in the description, such as {@code zone}
 * @param first number of the first record
 * @param last number of the last record
 */
public record RecordKind(String name, int first, int last) {
  public RecordKind {
    if (first < 0 || last < first) {
      throw new IllegalArgumentException(name + " " + first + ".." + last);
    }
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
