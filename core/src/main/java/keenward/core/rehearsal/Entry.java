package keenward.core.rehearsal;

import keenward.core.plan.ZoneResponse;

/** The entry time: what starts it, what waits for it, what its end brings. */
final class Entry {

  private Entry() {}

  /** A delayed zone is violated while armed. */
  static void crossed(Draft draft, int zone, int delay) {
    int partition = draft.tables.partition(zone);
    draft.set(ZoneFlag.ENTERED, zone);
    int left = draft.value(PartitionRegister.ENTRY_LEFT, partition);
    if (left == 0) {
      draft.enter(Behaviour.ENTRY_STARTED, zone, delay);
      draft.put(PartitionRegister.ENTRY_ZONE, partition, zone + 1);
      run(draft, partition, delay);
      draft.emit(new Output.Annunciation(partition, Beep.ENTRY, true));
      draft.leave();
    } else if (delay < left && draft.tables.has(Option.SHORTER_ENTRY_WINS)) {
      draft.enter(Behaviour.ENTRY_SHORTENED, zone, delay);
      draft.given(PartitionRegister.ENTRY_LEFT, partition);
      run(draft, partition, delay);
      draft.leave();
    } else {
      draft.enter(Behaviour.ENTRY_KEPT, zone, Math.max(left, 0));
      draft.given(PartitionRegister.ENTRY_LEFT, partition);
      draft.emit(new Output.NoEffect(zone));
      draft.leave();
    }
  }

  private static void run(Draft draft, int partition, int delay) {
    draft.start(PartitionRegister.ENTRY_LEFT, partition, delay);
    draft.emit(new Output.Display(partition, Notice.DISARM_NOW, partition, delay));
  }

  /** Whether an entry time that runs lets a follower pass; says so if it does. */
  static boolean releases(Draft draft, int zone) {
    int by = releasedBy(draft, zone);
    if (by == SystemModel.NONE) {
      return false;
    }
    draft.enter(Behaviour.FOLLOWER_WAITS, zone, 0);
    draft.given(PartitionRegister.ENTRY_LEFT, by);
    draft.emit(new Output.NoEffect(zone));
    draft.leave();
    return true;
  }

  /** The partition whose entry time lets a follower pass; none if there is none. */
  private static int releasedBy(Draft draft, int zone) {
    long near = draft.tables.onTheWay(draft.tables.partition(zone));
    for (int partition = 0; partition < draft.tables.partitions(); partition++) {
      if (Bits.has(near, partition)
          && draft.isRunning(PartitionRegister.ENTRY_LEFT, partition)
          && isBoundTo(draft, zone)) {
        return partition;
      }
    }
    return SystemModel.NONE;
  }

  private static boolean isBoundTo(Draft draft, int zone) {
    int[] routes = draft.tables.releasedBy(zone);
    if (routes.length == 0) {
      return true;
    }
    for (int route : routes) {
      if (draft.is(ZoneFlag.ENTERED, route)) {
        return true;
      }
    }
    return false;
  }

  /** The entry time has run out without a code. */
  static void ended(Draft draft, int partition) {
    int first = draft.value(PartitionRegister.ENTRY_ZONE, partition) - 1;
    close(draft, partition);
    draft.enter(Behaviour.ENTRY_ENDED, first, 0);
    if (!Zones.isLeftOut(draft, first)) {
      Alarms.raise(draft, first);
    }
    draft.leave();
    long near = draft.tables.onTheWay(partition);
    for (int zone = 0; zone < draft.tables.zones(); zone++) {
      if (zone != first && Bits.has(near, draft.tables.partition(zone)) && isStuck(draft, zone)) {
        draft.enter(Behaviour.OPEN_AT_ENTRY_END, zone, 0);
        Alarms.raise(draft, zone);
        draft.leave();
      }
    }
  }

  /** Whether a zone of the entry route is still open and nothing excuses it any longer. */
  private static boolean isStuck(Draft draft, int zone) {
    ZoneResponse response = draft.tables.response(zone);
    int partition = draft.tables.partition(zone);
    return draft.is(ZoneFlag.OPEN, zone)
        && (response == ZoneResponse.FOLLOWER || response == ZoneResponse.ENTRY_EXIT)
        && draft.tables.isLive(zone, draft.value(PartitionRegister.MODE, partition))
        && !draft.isRunning(PartitionRegister.EXIT_LEFT, partition)
        && !draft.isRunning(PartitionRegister.ENTRY_LEFT, partition)
        && !draft.isLeftOut(zone)
        && !Zones.isUnderWay(draft, zone)
        && releasedBy(draft, zone) == SystemModel.NONE;
  }

  /** The entry time is over, by a code or by itself. */
  static void close(Draft draft, int partition) {
    draft.stop(PartitionRegister.ENTRY_LEFT, partition);
    draft.put(PartitionRegister.ENTRY_ZONE, partition, 0);
    for (int zone : draft.tables.zonesOf(partition)) {
      draft.clear(ZoneFlag.ENTERED, zone);
    }
    draft.emit(
        Behaviour.ENTRY_CLOSED,
        partition,
        0,
        new Output.Annunciation(partition, Beep.ENTRY, false));
  }
}
