package keenward.core.rehearsal;

import java.util.Set;

/**
 * A place where people give orders to the system, named by its index in {@link
 * SystemModel#keypads()}.
 *
 * @param name name, unique
 * @param kind what it is
 * @param partitions indexes of the partitions that it serves
 */
public record KeypadModel(String name, Kind kind, Set<Integer> partitions) {

  /** What people hold in their hand. */
  public enum Kind {
    /** A keypad on the wall; it may stop listening after wrong codes. */
    KEYPAD,
    /** A portable radio control. */
    FOB,
    /** A telephone or computer elsewhere. */
    REMOTE
  }

  public KeypadModel {
    partitions = Set.copyOf(partitions);
  }
}
