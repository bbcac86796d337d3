package keenward.core.rehearsal;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.ZoneResponse;

/** The model, arranged for being asked often. */
final class Tables {

  private static final ArmingMode[] MODES = ArmingMode.values();

  final SystemModel model;
  final Layout layout;
  private final ZoneResponse[] responses;
  private final int[] partitions;
  private final int[] liveModes;
  private final int[][] delays;
  private final int[] traits;
  private final int[] groups;
  private final int[][] releasedBy;
  private final int[][] zonesOf;
  private final long[] sharers;
  private final long[] commons;
  private final long[] mayArm;
  private final long[] mayDisarm;
  private final long[] serves;

  Tables(SystemModel model) {
    this.model = model;
    layout = new Layout(model);
    int zones = model.zones().size();
    responses = new ZoneResponse[zones];
    partitions = new int[zones];
    liveModes = new int[zones];
    delays = new int[MODES.length + 1][zones];
    traits = new int[zones];
    groups = new int[zones];
    releasedBy = new int[zones][];
    for (int zone = 0; zone < zones; zone++) {
      ZoneModel each = model.zones().get(zone);
      responses[zone] = each.response();
      partitions[zone] = each.partition();
      groups[zone] = SystemModel.NONE;
      releasedBy[zone] = toArray(each.releasedBy());
      for (ArmingMode mode : MODES) {
        liveModes[zone] |= each.liveIn().contains(mode) ? 1 << Modes.number(mode) : 0;
        delays[Modes.number(mode)][zone] = each.delays().in(mode);
      }
      for (ZoneTrait trait : each.traits()) {
        traits[zone] |= 1 << trait.slot();
      }
    }
    for (int group = 0; group < model.crossGroups().size(); group++) {
      for (int zone : model.crossGroups().get(group).zones()) {
        groups[zone] = group;
      }
    }
    zonesOf = zonesOf(model);
    sharers = new long[model.partitions().size()];
    commons = new long[model.partitions().size()];
    for (int partition = 0; partition < sharers.length; partition++) {
      for (int sharer : model.partitions().get(partition).commonTo()) {
        sharers[partition] |= 1L << sharer;
        commons[sharer] |= 1L << partition;
      }
    }
    mayArm = new long[model.users().size()];
    mayDisarm = new long[model.users().size()];
    for (int user = 0; user < mayArm.length; user++) {
      mayArm[user] = mask(model.users().get(user).mayArm());
      mayDisarm[user] = mask(model.users().get(user).mayDisarm());
    }
    serves = new long[model.keypads().size()];
    for (int keypad = 0; keypad < serves.length; keypad++) {
      serves[keypad] = mask(model.keypads().get(keypad).partitions());
    }
  }

  private static int[][] zonesOf(SystemModel model) {
    int[][] found = new int[model.partitions().size()][];
    for (int partition = 0; partition < found.length; partition++) {
      List<Integer> members = new ArrayList<>();
      for (int zone = 0; zone < model.zones().size(); zone++) {
        if (model.zones().get(zone).partition() == partition) {
          members.add(zone);
        }
      }
      found[partition] = toArray(members);
    }
    return found;
  }

  private static int[] toArray(List<Integer> values) {
    int[] array = new int[values.size()];
    for (int index = 0; index < array.length; index++) {
      array[index] = values.get(index);
    }
    return array;
  }

  private static long mask(Set<Integer> indexes) {
    long mask = 0;
    for (int index : indexes) {
      mask |= 1L << index;
    }
    return mask;
  }

  boolean hasZone(int zone) {
    return zone >= 0 && zone < responses.length;
  }

  boolean hasPartition(int partition) {
    return partition >= 0 && partition < sharers.length;
  }

  boolean hasUser(int user) {
    return user >= 0 && user < mayArm.length;
  }

  boolean hasKeypad(int keypad) {
    return keypad >= 0 && keypad < serves.length;
  }

  int zones() {
    return responses.length;
  }

  int partitions() {
    return sharers.length;
  }

  ZoneResponse response(int zone) {
    return responses[zone];
  }

  int partition(int zone) {
    return partitions[zone];
  }

  /** Whether a zone is live in a mode, given as in {@link PartitionRegister#MODE}. */
  boolean isLive(int zone, int mode) {
    return Bits.has(liveModes[zone], mode);
  }

  /** The entry delay of a zone in a mode, given as in {@link PartitionRegister#MODE}. */
  int delay(int zone, int mode) {
    return delays[mode][zone];
  }

  boolean has(ZoneTrait trait, int zone) {
    return Bits.has(traits[zone], trait.slot());
  }

  /** None when the zone is in no cross-zone group. */
  int group(int zone) {
    return groups[zone];
  }

  int[] releasedBy(int zone) {
    return releasedBy[zone];
  }

  int[] zonesOf(int partition) {
    return zonesOf[partition];
  }

  boolean isCommon(int partition) {
    return sharers[partition] != 0;
  }

  /** Bits of the partitions that share a common area. */
  long sharers(int partition) {
    return sharers[partition];
  }

  /** Bits of the common areas of a partition. */
  long commons(int partition) {
    return commons[partition];
  }

  /**
   * Bits of the partitions between which people walk on their way in or out: itself, its common
   * areas or sharers.
   */
  long onTheWay(int partition) {
    return (1L << partition) | sharers[partition] | commons[partition];
  }

  long mayArm(int user) {
    return mayArm[user];
  }

  long mayDisarm(int user) {
    return mayDisarm[user];
  }

  /** Bits of the partitions that a keypad serves; all when none is stated. */
  long serves(int keypad) {
    return keypad == SystemModel.NONE ? -1L : serves[keypad];
  }

  /** How an order at a keypad reaches the system. */
  Way way(int keypad) {
    if (keypad == SystemModel.NONE) {
      return Way.KEYPAD;
    }
    return switch (model.keypads().get(keypad).kind()) {
      case KEYPAD -> Way.KEYPAD;
      case FOB -> Way.FOB;
      case REMOTE -> Way.REMOTE;
    };
  }

  int timing(TimingSetting setting) {
    return model.timings().of(setting);
  }

  boolean has(Option option) {
    return model.options().has(option);
  }
}
