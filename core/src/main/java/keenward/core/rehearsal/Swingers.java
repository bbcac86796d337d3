package keenward.core.rehearsal;

/** Swinger shut-down: a zone that alarms again and again is shut out. */
final class Swingers {

  private Swingers() {}

  /** Counts an alarm of a zone; whether it is within the limit. */
  static boolean admits(Draft draft, int zone) {
    int register = draft.layout.alarmCount(zone);
    if (register == SystemModel.NONE) {
      return true;
    }
    int partition = draft.tables.partition(zone);
    int limit = draft.tables.model.zones().get(zone).swingerLimit();
    if (draft.value(register) < limit) {
      draft.put(register, draft.value(register) + 1);
      draft.put(
          PartitionRegister.SWINGER_LEFT,
          partition,
          draft.tables.timing(TimingSetting.SWINGER_RESET));
      return true;
    }
    draft.enter(Behaviour.SHUT_OUT, zone, 0);
    draft.emit(new Output.NoEffect(zone));
    if (!draft.is(ZoneFlag.SHUT_OUT, zone)) {
      draft.set(ZoneFlag.SHUT_OUT, zone);
      signal(draft, zone, SignalCodes.NEW);
    }
    draft.leave();
    return false;
  }

  private static void signal(Draft draft, int zone, int qualifier) {
    draft.emit(
        new Output.Signal(
            SignalCodes.SWINGER_SHUT_OUT,
            qualifier,
            draft.tables.partition(zone),
            zone,
            SystemModel.NONE));
  }

  /** The count starts again for every zone of a partition. */
  static void reset(Draft draft, int partition) {
    draft.stop(PartitionRegister.SWINGER_LEFT, partition);
    for (int zone : draft.tables.zonesOf(partition)) {
      int register = draft.layout.alarmCount(zone);
      if (register != SystemModel.NONE) {
        draft.put(register, 0);
      }
      if (draft.is(ZoneFlag.SHUT_OUT, zone)) {
        draft.clear(ZoneFlag.SHUT_OUT, zone);
        draft.enter(Behaviour.SHUT_OUT_ENDS, zone, 0);
        signal(draft, zone, SignalCodes.RESTORE);
        draft.leave();
      }
    }
  }
}
