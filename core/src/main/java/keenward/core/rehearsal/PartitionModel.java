package keenward.core.rehearsal;

import java.util.List;

/**
 * A partition as the machine knows it, named by its index in {@link SystemModel#partitions()}.
 *
 * @param number number in signals, from 1
 * @param name name at the keypad
 * @param commonTo indexes of the partitions that share it; empty when it is no common area
 * @param automaticArmingTenths time of day at which it arms by itself, in tenths of a second since
 *     midnight; {@link #NEVER} when it does not
 */
public record PartitionModel(
    int number, String name, List<Integer> commonTo, int automaticArmingTenths) {

  /** It does not arm by itself. */
  public static final int NEVER = -1;

  private static final int DAY_TENTHS = 864_000;

  public PartitionModel {
    commonTo = List.copyOf(commonTo);
    if (automaticArmingTenths < NEVER || automaticArmingTenths >= DAY_TENTHS) {
      throw new IllegalArgumentException("partition " + name + ": not a time of day");
    }
  }

  /** A partition of its own that does not arm by itself. */
  public static PartitionModel of(int number, String name) {
    return new PartitionModel(number, name, List.of(), NEVER);
  }

  /** The common area of these partitions. */
  public static PartitionModel common(int number, String name, Integer... sharers) {
    return new PartitionModel(number, name, List.of(sharers), NEVER);
  }
}
