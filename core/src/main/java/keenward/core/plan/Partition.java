package keenward.core.plan;

import java.util.List;

/**
 * A part of the system that is armed and disarmed on its own.
 *
 * @param name name, unique in the plan
 * @param number number at the panel and in signals, from 1
 * @param keypads names of the keypads that serve it; empty means all
 * @param commonTo names of the partitions that share this one as their common area: armed once all
 *     of them are, disarmed with the first of them; empty when it is no common area
 */
public record Partition(String name, int number, List<String> keypads, List<String> commonTo) {

  /** The partition of a plan that has no partitions section. */
  public static final Partition ONLY = new Partition("System", 1, List.of(), List.of());

  public Partition {
    keypads = List.copyOf(keypads);
    commonTo = List.copyOf(commonTo);
  }
}
