package keenward.core.rehearsal;

import keenward.core.plan.ZoneResponse;

/** The exit time: who may pass, what restarts it, what its end brings. */
final class Exit {

  private Exit() {}

  static void start(Draft draft, int partition, int tenths) {
    draft.put(PartitionRegister.EXIT_OPENED, partition, 0);
    for (int zone = 0; zone < draft.tables.zones(); zone++) {
      if (isExitDoorOf(draft, zone, partition)) {
        draft.clear(ZoneFlag.LEFT_BY, zone);
        if (draft.is(ZoneFlag.OPEN, zone)) {
          draft.put(PartitionRegister.EXIT_OPENED, partition, 1);
        }
      }
    }
    draft.put(PartitionRegister.EXIT_RESTARTED, partition, 0);
    draft.enter(Behaviour.EXIT_STARTED, partition, tenths);
    run(draft, partition, tenths);
    draft.emit(new Output.Annunciation(partition, Beep.EXIT, true));
    draft.leave();
  }

  private static void run(Draft draft, int partition, int tenths) {
    draft.start(PartitionRegister.EXIT_LEFT, partition, tenths);
    draft.emit(new Output.Display(partition, Notice.LEAVE_NOW, partition, tenths));
  }

  private static boolean isExitDoorOf(Draft draft, int zone, int partition) {
    return draft.tables.response(zone) == ZoneResponse.ENTRY_EXIT
        && Bits.has(draft.tables.onTheWay(partition), draft.tables.partition(zone));
  }

  /** A live zone is violated during the exit time. */
  static void crossed(Draft draft, int zone) {
    int partition = draft.tables.partition(zone);
    ZoneResponse response = draft.tables.response(zone);
    boolean route =
        response == ZoneResponse.ENTRY_EXIT
            || response == ZoneResponse.FOLLOWER
            || draft.tables.delay(zone, draft.value(PartitionRegister.MODE, partition)) > 0;
    if (route) {
      draft.emit(Behaviour.EXIT_ROUTE_PASSES, zone, 0, new Output.NoEffect(zone));
      if (response == ZoneResponse.ENTRY_EXIT) {
        doorOpened(draft, zone);
      }
    } else if (draft.tables.has(Option.EXIT_IGNORES_OTHER_ZONES)) {
      draft.emit(Behaviour.EXIT_IGNORES_ZONE, zone, 0, new Output.NoEffect(zone));
    } else {
      draft.enter(Behaviour.OFF_THE_EXIT_ROUTE, zone, 0);
      Alarms.raise(draft, zone);
      draft.leave();
    }
  }

  private static void doorOpened(Draft draft, int zone) {
    long near = draft.tables.onTheWay(draft.tables.partition(zone));
    for (int partition = 0; partition < draft.tables.partitions(); partition++) {
      if (Bits.has(near, partition) && draft.isRunning(PartitionRegister.EXIT_LEFT, partition)) {
        draft.put(PartitionRegister.EXIT_OPENED, partition, 1);
        if (draft.is(ZoneFlag.LEFT_BY, zone)
            && draft.value(PartitionRegister.EXIT_RESTARTED, partition) == 0
            && draft.tables.has(Option.EXIT_RESTART)) {
          int tenths = draft.tables.timing(TimingSetting.EXIT_TIME);
          draft.put(PartitionRegister.EXIT_RESTARTED, partition, 1);
          draft.enter(Behaviour.EXIT_RESTARTED, partition, tenths);
          draft.given(PartitionRegister.EXIT_LEFT, partition);
          run(draft, partition, tenths);
          draft.leave();
        }
      }
    }
  }

  /** An entry/exit door is shut. */
  static void doorShut(Draft draft, int zone) {
    long near = draft.tables.onTheWay(draft.tables.partition(zone));
    for (int partition = 0; partition < draft.tables.partitions(); partition++) {
      if (Bits.has(near, partition) && draft.isRunning(PartitionRegister.EXIT_LEFT, partition)) {
        draft.set(ZoneFlag.LEFT_BY, zone);
      }
    }
  }

  /** The exit time is over, or there was none. */
  static void ended(Draft draft, int partition) {
    draft.enter(Behaviour.EXIT_ENDED, partition, 0);
    draft.emit(new Output.Annunciation(partition, Beep.EXIT, false));
    armed(draft, partition);
    draft.leave();
  }

  /** From now on the partition is armed in earnest. */
  static void armed(Draft draft, int partition) {
    if (nobodyLeft(draft, partition)) {
      draft.enter(Behaviour.NOBODY_LEFT, partition, 0);
      draft.put(PartitionRegister.MODE, partition, Modes.STAY);
      showArmed(draft, partition);
      CommonAreas.follow(draft, partition);
      draft.leave();
    } else {
      showArmed(draft, partition);
    }
    forgetLeaving(draft, partition);
    if (draft.value(PartitionRegister.CLOSING_SENT, partition) == 0) {
      Closings.closing(draft, partition, Behaviour.CLOSING_AT_END);
    }
    int recent = draft.tables.timing(TimingSetting.RECENT_CLOSING_WINDOW);
    draft.start(PartitionRegister.RECENT_LEFT, partition, recent);
    judgeOpenZones(draft, partition);
  }

  /** Nobody asks any more who left by which door. */
  static void forgetLeaving(Draft draft, int partition) {
    draft.put(PartitionRegister.EXIT_OPENED, partition, 0);
    draft.put(PartitionRegister.EXIT_RESTARTED, partition, 0);
    for (int zone : draft.tables.zonesOf(partition)) {
      draft.clear(ZoneFlag.LEFT_BY, zone);
    }
  }

  private static void showArmed(Draft draft, int partition) {
    int mode = draft.value(PartitionRegister.MODE, partition);
    Notice notice =
        mode == Modes.AWAY
            ? Notice.ARMED_AWAY
            : mode == Modes.STAY ? Notice.ARMED_STAY : Notice.ARMED_NIGHT;
    draft.emit(new Output.Display(partition, notice, partition, 0));
  }

  private static boolean nobodyLeft(Draft draft, int partition) {
    if (!draft.tables.has(Option.AUTOMATIC_STAY)
        || draft.value(PartitionRegister.MODE, partition) != Modes.AWAY
        || draft.value(PartitionRegister.WAY, partition) != Way.KEYPAD.slot()
        || draft.value(PartitionRegister.EXIT_OPENED, partition) != 0) {
      return false;
    }
    for (int zone = 0; zone < draft.tables.zones(); zone++) {
      if (isExitDoorOf(draft, zone, partition)) {
        return true;
      }
    }
    return false;
  }

  /** Doors first: the entry time that an open door starts excuses the followers behind it. */
  private static void judgeOpenZones(Draft draft, int partition) {
    int mode = draft.value(PartitionRegister.MODE, partition);
    for (int zone : draft.tables.zonesOf(partition)) {
      int delay = draft.tables.delay(zone, mode);
      if (draft.tables.response(zone) == ZoneResponse.ENTRY_EXIT
          && delay > 0
          && isOpenAndLive(draft, zone, mode)) {
        draft.set(ZoneFlag.EXIT_ERROR, zone);
        draft.enter(Behaviour.EXIT_ERROR, zone, delay);
        draft.emit(new Output.Display(partition, Notice.CLOSE_DOOR, zone, 0));
        Sounding.start(draft, partition, Tone.BURGLARY);
        Entry.crossed(draft, zone, delay);
        draft.leave();
      }
    }
    for (int zone : draft.tables.zonesOf(partition)) {
      if (isOpenAndLive(draft, zone, mode)
          && !draft.is(ZoneFlag.EXIT_ERROR, zone)
          && Intrusion.isFor(draft.tables.response(zone))
          && !Zones.isUnderWay(draft, zone)) {
        if (draft.tables.has(Option.OPEN_AT_EXIT_END_ALARMS)) {
          draft.enter(Behaviour.OPEN_AT_EXIT_END, zone, 0);
          Intrusion.violatedArmed(draft, zone);
          draft.leave();
        } else {
          draft.emit(Behaviour.OPEN_AT_EXIT_END_PASSES, zone, 0, new Output.NoEffect(zone));
        }
      }
    }
  }

  private static boolean isOpenAndLive(Draft draft, int zone, int mode) {
    return draft.is(ZoneFlag.OPEN, zone)
        && !draft.isLeftOut(zone)
        && draft.tables.isLive(zone, mode);
  }
}
