package keenward.core.rehearsal;

/** Common areas: armed once all that share them are, disarmed with the first of them. */
final class CommonAreas {

  private CommonAreas() {}

  /**
   * Arms or re-arms the common areas of a partition that was just armed or has changed its mode.
   */
  static void follow(Draft draft, int partition) {
    long commons = draft.tables.commons(partition);
    for (int common = 0; common < draft.tables.partitions(); common++) {
      if (!Bits.has(commons, common)) {
        continue;
      }
      int mode = mode(draft, common, SystemModel.NONE, 0);
      if (mode != 0 && mode != draft.value(PartitionRegister.MODE, common)) {
        draft.enter(Behaviour.COMMON_AREA_ARMS, common, 0);
        Arming.begin(
            draft,
            new Arming.Order(
                common,
                Modes.mode(mode),
                draft.value(PartitionRegister.USER, partition) - 1,
                Way.of(draft.value(PartitionRegister.WAY, partition)),
                true),
            Math.max(draft.value(PartitionRegister.EXIT_LEFT, partition), 0));
        draft.leave();
      }
    }
  }

  /**
   * The mode that a partition would have as a common area once an order is carried out; 0 disarmed
   * or no such area.
   */
  static int modeOnceArmed(Draft draft, int common, Arming.Order order) {
    return !Bits.has(draft.tables.sharers(common), order.partition())
        ? 0
        : mode(draft, common, order.partition(), order.modeNumber());
  }

  /** Away when all sharers are, stay when one of them has people in it, disarmed otherwise. */
  private static int mode(Draft draft, int common, int changed, int changedMode) {
    long sharers = draft.tables.sharers(common);
    int mode = Modes.AWAY;
    for (int sharer = 0; sharer < draft.tables.partitions(); sharer++) {
      if (Bits.has(sharers, sharer)) {
        int each = sharer == changed ? changedMode : draft.value(PartitionRegister.MODE, sharer);
        if (each == 0) {
          return 0;
        }
        mode = each == Modes.AWAY ? mode : Modes.STAY;
      }
    }
    return mode;
  }
}
