package keenward.core.rehearsal.planned;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import keenward.core.plan.Partition;
import keenward.core.plan.SitePlan;
import keenward.core.rehearsal.PartitionModel;

/**
 * The partitions of a plan by index, and beside them an area for every set of partitions that
 * shares zones without a common area: such zones are live once all of the set are armed, as a
 * common area is.
 */
final class Areas {

  private final Map<String, Integer> indexes = new HashMap<>();
  private final Map<String, Set<Integer>> sharers = new HashMap<>();
  private final Map<Set<Integer>, Integer> shared = new HashMap<>();
  private final List<PartitionModel> models = new ArrayList<>();

  private Areas() {}

  static Areas of(SitePlan plan) {
    Areas areas = new Areas();
    for (Partition partition : plan.partitions()) {
      areas.indexes.put(partition.name(), areas.indexes.size());
    }
    for (Partition partition : plan.partitions()) {
      areas.sharers.put(
          partition.name(), areas.owners(plan, partition, new TreeSet<>(), new TreeSet<>()));
    }
    for (Partition partition : plan.partitions()) {
      Set<Integer> owners = areas.owners(partition.name());
      boolean common = !partition.commonTo().isEmpty() && owners.size() > 1;
      areas.models.add(
          new PartitionModel(
              partition.number(),
              partition.name(),
              common ? List.copyOf(owners) : List.of(),
              PartitionModel.NEVER));
    }
    return areas;
  }

  private Set<Integer> owners(String partition) {
    return sharers.getOrDefault(partition, Set.of());
  }

  /**
   * The partitions that share a common area, or a partition itself; a common area of common areas
   * is their partitions'.
   */
  private Set<Integer> owners(
      SitePlan plan, Partition partition, Set<Integer> found, Set<String> seen) {
    if (seen.add(partition.name())) {
      if (partition.commonTo().isEmpty()) {
        index(partition.name(), found);
      }
      for (String sharer : partition.commonTo()) {
        plan.findPartition(sharer).ifPresent(each -> owners(plan, each, found, seen));
      }
    }
    return found;
  }

  private void index(String partition, Set<Integer> found) {
    Integer index = indexes.get(partition);
    if (index != null) {
      found.add(index);
    }
  }

  /** Partitions first, in the order of the plan. */
  List<PartitionModel> models() {
    return models;
  }

  /** The index of a partition; one that does not exist is the first. */
  int index(String partition) {
    return indexes.getOrDefault(partition, 0);
  }

  Set<Integer> indexes(List<String> partitions) {
    Set<Integer> found = new TreeSet<>();
    for (String partition : partitions) {
      index(partition, found);
    }
    return found;
  }

  /** The area of a zone that belongs to these partitions. */
  int areaOf(List<String> partitions) {
    if (partitions.size() == 1) {
      return index(partitions.getFirst());
    }
    Set<Integer> owners = new TreeSet<>();
    for (String partition : partitions) {
      owners.addAll(owners(partition));
    }
    if (owners.size() < 2) {
      return owners.isEmpty() ? 0 : owners.iterator().next();
    }
    return shared.computeIfAbsent(owners, this::addShared);
  }

  private int addShared(Set<Integer> owners) {
    List<String> names = new ArrayList<>();
    int number = 0;
    for (int owner : owners) {
      names.add(models.get(owner).name());
      number = number == 0 ? models.get(owner).number() : number;
    }
    models.add(
        new PartitionModel(
            number, String.join(" and ", names), List.copyOf(owners), PartitionModel.NEVER));
    return models.size() - 1;
  }
}
