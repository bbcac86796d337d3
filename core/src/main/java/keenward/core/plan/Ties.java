package keenward.core.plan;

import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;

/** Partitions that are armed and disarmed with others because of a common area. */
public final class Ties {

  private Ties() {}

  /** These partitions, the common areas of theirs, and the partitions to which they are common. */
  public static Set<String> of(SitePlan plan, Collection<String> partitions) {
    Set<String> tied = new TreeSet<>(partitions);
    for (Partition partition : plan.partitions()) {
      if (partitions.contains(partition.name())) {
        tied.addAll(partition.commonTo());
      }
      if (partition.commonTo().stream().anyMatch(partitions::contains)) {
        tied.add(partition.name());
      }
    }
    return tied;
  }

  /** Whether two sets of partitions have one in common. */
  public static boolean meet(Collection<String> one, Collection<String> other) {
    return one.stream().anyMatch(other::contains);
  }
}
