package keenward.core.rehearsal;

import keenward.core.plan.ZoneResponse;

/** Restores of alarms that were sent. */
final class Restores {

  private Restores() {}

  /** A zone is at rest: its restore goes out unless something keeps it. */
  static void atRest(Draft draft, int zone) {
    boolean waits =
        draft.tables.has(Option.RESTORE_WAITS_FOR_CUT_OFF)
            && draft.isRunning(PartitionRegister.BURGLARY_LEFT, draft.tables.partition(zone));
    if (draft.is(ZoneFlag.REPORTED, zone) && !draft.is(ZoneFlag.LATCHED, zone) && !waits) {
      restore(draft, zone, Behaviour.RESTORED);
    }
  }

  /** The sounder has stopped: restores that waited for it go out. */
  static void cutOff(Draft draft, int partition) {
    if (!draft.tables.has(Option.RESTORE_WAITS_FOR_CUT_OFF)) {
      return;
    }
    for (int zone : draft.tables.zonesOf(partition)) {
      if (!draft.is(ZoneFlag.OPEN, zone)) {
        atRest(draft, zone);
      }
    }
  }

  /** A code has silenced the partition. */
  static void silenced(Draft draft, int partition) {
    cutOff(draft, partition);
    if (!draft.tables.has(Option.SILENCING_RESTORES)) {
      return;
    }
    for (int zone : draft.tables.zonesOf(partition)) {
      if (draft.tables.response(zone) == ZoneResponse.TWENTY_FOUR_HOUR
          && draft.is(ZoneFlag.REPORTED, zone)) {
        restore(draft, zone, Behaviour.RESTORED_BY_CODE);
      }
    }
  }

  private static void restore(Draft draft, int zone, Behaviour behaviour) {
    draft.clear(ZoneFlag.REPORTED, zone);
    if (draft.tables.has(ZoneTrait.RESTORE_REPORTED, zone)) {
      draft.enter(behaviour, zone, 0);
      draft.given(draft.layout.alarmKey(zone));
      draft.emit(
          new Output.Signal(
              draft.tables.model.zones().get(zone).eventCode(),
              SignalCodes.RESTORE,
              draft.tables.partition(zone),
              zone,
              SystemModel.NONE));
      draft.leave();
    }
  }
}
