package keenward.core.rehearsal;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/**
 * The planned system, reduced to what decides its behaviour. Parts are named by their index in
 * these lists.
 *
 * @param partitions partitions, at most 64
 * @param zones zones
 * @param users users
 * @param keypads places where people give orders
 * @param crossGroups cross-zone groups; a zone is in one at most
 * @param timings numbers
 * @param options choices
 */
public record SystemModel(
    List<PartitionModel> partitions,
    List<ZoneModel> zones,
    List<UserModel> users,
    List<KeypadModel> keypads,
    List<CrossGroup> crossGroups,
    Timings timings,
    RehearsalOptions options) {

  /** The index that stands for nobody, nowhere or nothing. */
  public static final int NONE = -1;

  private static final int MOST_PARTITIONS = 64;

  public SystemModel {
    partitions = List.copyOf(partitions);
    zones = List.copyOf(zones);
    users = List.copyOf(users);
    keypads = List.copyOf(keypads);
    crossGroups = List.copyOf(crossGroups);
    if (partitions.isEmpty() || partitions.size() > MOST_PARTITIONS) {
      throw new IllegalArgumentException("a system has 1 to 64 partitions");
    }
    checkReferences(partitions, zones, users, keypads, crossGroups);
  }

  private static void checkReferences(
      List<PartitionModel> partitions,
      List<ZoneModel> zones,
      List<UserModel> users,
      List<KeypadModel> keypads,
      List<CrossGroup> crossGroups) {
    Consumer<Integer> partition = index -> checkIndex("partition", index, partitions.size());
    Consumer<Integer> zone = index -> checkIndex("zone", index, zones.size());
    for (PartitionModel each : partitions) {
      each.commonTo().forEach(partition);
      for (int sharer : each.commonTo()) {
        if (!partitions.get(sharer).commonTo().isEmpty()) {
          throw new IllegalArgumentException(
              each.name() + ": a common area is not shared by another common area");
        }
      }
    }
    Set<Integer> numbers = new HashSet<>();
    for (ZoneModel each : zones) {
      partition.accept(each.partition());
      each.releasedBy().forEach(zone);
      if (!numbers.add(each.number())) {
        throw new IllegalArgumentException("zone number " + each.number() + " is there twice");
      }
    }
    for (UserModel each : users) {
      each.mayArm().forEach(partition);
      each.mayDisarm().forEach(partition);
    }
    keypads.forEach(each -> each.partitions().forEach(partition));
    Set<Integer> grouped = new HashSet<>();
    for (CrossGroup group : crossGroups) {
      for (int index : group.zones()) {
        zone.accept(index);
        if (!grouped.add(index)) {
          throw new IllegalArgumentException(
              "zone " + zones.get(index).number() + " is in two cross-zone groups");
        }
      }
    }
  }

  private static void checkIndex(String what, int index, int size) {
    if (index < 0 || index >= size) {
      throw new IllegalArgumentException("no " + what + " has index " + index);
    }
  }

  /** The same system with other choices. */
  public SystemModel with(RehearsalOptions others) {
    return new SystemModel(partitions, zones, users, keypads, crossGroups, timings, others);
  }

  /** The same system with other numbers. */
  public SystemModel with(Timings others) {
    return new SystemModel(partitions, zones, users, keypads, crossGroups, others, options);
  }
}
