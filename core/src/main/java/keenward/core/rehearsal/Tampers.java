package keenward.core.rehearsal;

import keenward.core.plan.ZoneResponse;

/** Lids and tamper zones: trouble while disarmed, alarm while armed. */
final class Tampers {

  private Tampers() {}

  static void lidOpened(Draft draft, int zone) {
    draft.set(ZoneFlag.LID_OPEN, zone);
    if (draft.isSuspended()) {
      draft.emit(Behaviour.NOT_WATCHED, zone, 0, new Output.NoEffect(zone));
    } else {
      opened(draft, zone);
    }
  }

  static void lidShut(Draft draft, int zone) {
    draft.clear(ZoneFlag.LID_OPEN, zone);
    if (!draft.isSuspended()) {
      over(draft, zone);
    }
  }

  static void zoneOpened(Draft draft, int zone) {
    opened(draft, zone);
  }

  /** A lid or a tamper zone is open. */
  static void opened(Draft draft, int zone) {
    boolean leftOut =
        draft.is(ZoneFlag.ISOLATED, zone)
            || (draft.isLeftOut(zone) && !draft.tables.has(Option.TAMPER_LIVE_WHEN_BYPASSED));
    if (leftOut) {
      draft.emit(Behaviour.LEFT_OUT_DOES_NOTHING, zone, 0, new Output.NoEffect(zone));
      return;
    }
    if (draft.is(ZoneFlag.TAMPERED, zone)) {
      return;
    }
    int partition = draft.tables.partition(zone);
    boolean armed =
        draft.isArmed(partition) && !draft.isRunning(PartitionRegister.EXIT_LEFT, partition);
    boolean alarm = armed || draft.tables.has(Option.TAMPER_ALARM_WHEN_DISARMED);
    draft.set(ZoneFlag.TAMPERED, zone);
    draft.set(ZoneFlag.TAMPER_ALARM, zone, alarm);
    draft.enter(alarm ? Behaviour.TAMPER_ALARM : Behaviour.TAMPER_TROUBLE, zone, 0);
    draft.remember(draft.layout.alarmKey(zone));
    if (alarm) {
      draft.set(ZoneFlag.ALARMED, zone);
      draft.emit(new Output.Display(partition, Notice.TAMPER, zone, 0));
      Sounding.start(draft, partition, Tone.BURGLARY);
      Reporting.startCancelWindow(draft, partition);
    } else {
      Technical.showTrouble(draft, zone, Notice.TAMPER);
    }
    signal(draft, zone, SignalCodes.NEW);
    draft.leave();
  }

  /** A lid or a tamper zone is shut. */
  static void over(Draft draft, int zone) {
    if (!draft.is(ZoneFlag.TAMPERED, zone) || isStillOpen(draft, zone)) {
      return;
    }
    if (draft.tables.has(Option.TAMPER_NEEDS_TECHNICIAN)) {
      draft.emit(Behaviour.TAMPER_STAYS, zone, 0, new Output.NoEffect(zone));
    } else {
      restore(draft, zone, Behaviour.TAMPER_OVER);
    }
  }

  /** A technician resets a tamper; whether that was possible. */
  static boolean reset(Draft draft, int zone) {
    if (isStillOpen(draft, zone)) {
      return false;
    }
    restore(draft, zone, Behaviour.TAMPER_RESET);
    return true;
  }

  private static boolean isStillOpen(Draft draft, int zone) {
    return draft.is(ZoneFlag.LID_OPEN, zone)
        || (draft.tables.response(zone) == ZoneResponse.TAMPER && draft.is(ZoneFlag.OPEN, zone));
  }

  private static void restore(Draft draft, int zone, Behaviour behaviour) {
    draft.clear(ZoneFlag.TAMPERED, zone);
    draft.enter(behaviour, zone, 0);
    draft.given(draft.layout.alarmKey(zone));
    signal(draft, zone, SignalCodes.RESTORE);
    draft.leave();
    draft.clear(ZoneFlag.TAMPER_ALARM, zone);
  }

  private static void signal(Draft draft, int zone, int qualifier) {
    int code = SignalCodes.SENSOR_TAMPER;
    if (draft.is(ZoneFlag.TAMPER_ALARM, zone)) {
      code =
          draft.tables.response(zone) == ZoneResponse.TAMPER
              ? draft.tables.model.zones().get(zone).eventCode()
              : SignalCodes.SENSOR_TAMPER_ALARM;
    }
    draft.emit(
        new Output.Signal(code, qualifier, draft.tables.partition(zone), zone, SystemModel.NONE));
  }
}
