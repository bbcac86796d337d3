package keenward.core.rehearsal;

/** Disarming and silencing. */
final class Disarming {

  private Disarming() {}

  static void ordered(Draft draft, Input.Disarm order) {
    if (!Access.admits(draft, order.keypad())) {
      return;
    }
    Way way = draft.tables.way(order.keypad());
    int only = order.partition();
    if (only != SystemModel.NONE) {
      if (draft.tables.isCommon(only)) {
        Access.refuse(
            draft, Behaviour.COMMON_AREA_REFUSED, order.keypad(), Notice.FOLLOWS_OTHERS, only);
      } else if (!may(draft, order.user(), only)) {
        Access.refuse(draft, Behaviour.NO_AUTHORITY, order.keypad(), Notice.NO_AUTHORITY, only);
      } else {
        disarm(draft, only, order.user(), way);
        duress(draft, only, order.user());
      }
      return;
    }
    boolean any = false;
    for (int partition = 0; partition < draft.tables.partitions(); partition++) {
      if (reaches(draft, order.user(), order.keypad(), partition)) {
        disarm(draft, partition, order.user(), way);
        if (!any) {
          duress(draft, partition, order.user());
        }
        any = true;
      }
    }
    if (!any) {
      Access.refuseEverywhere(draft, order.keypad());
    }
  }

  /** Whether a user may disarm a partition at a keypad without naming it. */
  static boolean reaches(Draft draft, int user, int keypad, int partition) {
    return Bits.has(draft.tables.serves(keypad), partition)
        && !draft.tables.isCommon(partition)
        && may(draft, user, partition);
  }

  private static boolean may(Draft draft, int user, int partition) {
    if (Bits.has(draft.tables.mayDisarm(user), partition)) {
      return true;
    }
    return draft.tables.has(Option.ARM_ONLY_DISARMS_OWN)
        && draft.isArmed(partition)
        && draft.value(PartitionRegister.USER, partition) == user + 1;
  }

  /**
   * Whether a code has something to end in a partition: it is armed, sounds, or an alarm can still
   * be taken back.
   */
  static boolean isNeeded(Draft draft, int partition) {
    return draft.isArmed(partition)
        || Sounding.isSounding(draft, partition)
        || draft.isRunning(PartitionRegister.ABORT_LEFT, partition)
        || draft.isRunning(PartitionRegister.CANCEL_LEFT, partition)
        || draft.isRunning(PartitionRegister.GAS_REPEAT_LEFT, partition);
  }

  /** A code under threat. */
  static void duress(Draft draft, int partition, int user) {
    if (draft.tables.model.users().get(user).duress()) {
      draft.emit(
          Behaviour.DURESS,
          user,
          0,
          new Output.Signal(
              SignalCodes.DURESS, SignalCodes.NEW, partition, SystemModel.NONE, user));
    }
  }

  /**
   * Disarms a partition, and the common areas that it shares; where it is disarmed already,
   * silences it.
   */
  static void disarm(Draft draft, int partition, int user, Way way) {
    Reporting.takeBack(draft, partition, user);
    Sounding.silence(draft, partition);
    LifeSafety.silenced(draft, partition);
    Restores.silenced(draft, partition);
    draft.put(PartitionRegister.WAITED_REPORT_SENT, partition, 0);
    int mode = draft.value(PartitionRegister.MODE, partition);
    if (mode == 0) {
      draft.emit(
          Behaviour.NOTHING_TO_DISARM,
          partition,
          0,
          new Output.Display(partition, Notice.DISARMED, partition, 0));
    } else {
      draft.enter(Behaviour.DISARMED, partition, 0);
      leaveArmed(draft, partition, mode, user, way);
      draft.leave();
    }
    Swingers.reset(draft, partition);
    for (int common = 0; common < draft.tables.partitions(); common++) {
      if (Bits.has(draft.tables.commons(partition), common) && isNeeded(draft, common)) {
        draft.enter(Behaviour.COMMON_AREA_DISARMS, common, 0);
        disarm(draft, common, user, way);
        draft.leave();
      }
    }
  }

  private static void leaveArmed(Draft draft, int partition, int mode, int user, Way way) {
    draft.put(PartitionRegister.MODE, partition, 0);
    if (draft.isRunning(PartitionRegister.EXIT_LEFT, partition)) {
      draft.stop(PartitionRegister.EXIT_LEFT, partition);
      draft.emit(new Output.Annunciation(partition, Beep.EXIT, false));
    }
    if (draft.isRunning(PartitionRegister.ENTRY_LEFT, partition)) {
      Entry.close(draft, partition);
    }
    draft.stop(PartitionRegister.RECENT_LEFT, partition);
    CrossZones.close(draft, partition);
    draft.emit(new Output.Display(partition, Notice.DISARMED, partition, 0));
    if (draft.value(PartitionRegister.CLOSING_SENT, partition) != 0) {
      Closings.opening(draft, partition, mode, way, user);
    }
    draft.put(PartitionRegister.CLOSING_SENT, partition, 0);
    Exit.forgetLeaving(draft, partition);
    draft.put(PartitionRegister.USER, partition, 0);
    draft.put(PartitionRegister.WAY, partition, 0);
    for (int zone : draft.tables.zonesOf(partition)) {
      draft.clear(ZoneFlag.EXIT_ERROR, zone);
    }
    Bypassing.ended(draft, partition, user);
  }
}
