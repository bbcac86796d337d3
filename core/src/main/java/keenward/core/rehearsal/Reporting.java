package keenward.core.rehearsal;

import keenward.core.plan.ZoneResponse;

/** Alarm reports: held back by the abort window, sent, taken back, cancelled. */
final class Reporting {

  private Reporting() {}

  /** Reports a burglary alarm, at once or once the abort window is over. */
  static void report(Draft draft, int zone) {
    int partition = draft.tables.partition(zone);
    if (draft.isRunning(PartitionRegister.RECENT_LEFT, partition)) {
      draft.stop(PartitionRegister.RECENT_LEFT, partition);
      draft.put(PartitionRegister.RECENT_PENDING, partition, 1);
    }
    int window =
        draft.tables.has(ZoneTrait.ABORTABLE, zone)
            ? draft.tables.timing(TimingSetting.ABORT_WINDOW)
            : 0;
    if (window == 0) {
      send(draft, zone);
    } else if (draft.value(PartitionRegister.WAITED_REPORT_SENT, partition) != 0
        && draft.isRunning(PartitionRegister.CANCEL_LEFT, partition)) {
      draft.enter(Behaviour.ABORT_WINDOW_OVER_ALREADY, zone, 0);
      send(draft, zone);
      draft.leave();
    } else {
      hold(draft, zone, partition, window);
    }
  }

  private static void hold(Draft draft, int zone, int partition, int window) {
    draft.set(ZoneFlag.PENDING, zone);
    int left = draft.value(PartitionRegister.ABORT_LEFT, partition);
    if (left != 0) {
      draft.enter(Behaviour.ABORT_WINDOW_JOINED, zone, Math.max(left, 0));
      draft.remember(draft.layout.alarmKey(zone));
      draft.emit(new Output.Log(Notice.REPORT_WAITS, zone, Math.max(left, 0)));
      draft.leave();
      return;
    }
    int entryLeft = draft.value(PartitionRegister.ENTRY_LEFT, partition);
    boolean waitsLonger = draft.tables.has(Option.REPORT_WAITS_FOR_ENTRY_END) && entryLeft > window;
    int wait = waitsLonger ? entryLeft : window;
    draft.enter(
        waitsLonger ? Behaviour.REPORT_WAITS_FOR_ENTRY : Behaviour.ABORT_WINDOW_STARTED,
        zone,
        wait);
    draft.remember(draft.layout.alarmKey(zone));
    draft.start(PartitionRegister.ABORT_LEFT, partition, wait);
    draft.emit(new Output.Log(Notice.REPORT_WAITS, zone, wait));
    draft.leave();
  }

  /** Nobody has disarmed: what was held back goes out, in the order of the zones. */
  static void abortWindowEnded(Draft draft, int partition) {
    draft.put(PartitionRegister.WAITED_REPORT_SENT, partition, 1);
    for (int zone : draft.tables.zonesOf(partition)) {
      if (draft.is(ZoneFlag.PENDING, zone)) {
        draft.clear(ZoneFlag.PENDING, zone);
        draft.resume(draft.layout.alarmKey(zone));
        draft.enter(Behaviour.ABORT_WINDOW_ENDED, zone, 0);
        send(draft, zone);
        draft.leave();
        draft.leave();
      }
    }
  }

  /** Sends the alarm of a zone and what goes with it. */
  static void send(Draft draft, int zone) {
    int partition = draft.tables.partition(zone);
    draft.set(ZoneFlag.REPORTED, zone);
    draft.remember(draft.layout.alarmKey(zone));
    draft.emit(
        new Output.Signal(
            draft.tables.model.zones().get(zone).eventCode(),
            SignalCodes.NEW,
            partition,
            zone,
            SystemModel.NONE));
    if (draft.is(ZoneFlag.EXIT_ERROR, zone)) {
      exitError(draft, zone, partition);
    }
    if (draft.value(PartitionRegister.RECENT_PENDING, partition) != 0) {
      draft.put(PartitionRegister.RECENT_PENDING, partition, 0);
      draft.emit(
          Behaviour.RECENT_CLOSING,
          partition,
          0,
          new Output.Signal(
              SignalCodes.RECENT_CLOSING,
              SignalCodes.NEW,
              partition,
              SystemModel.NONE,
              draft.value(PartitionRegister.USER, partition) - 1));
    }
    if (draft.tables.response(zone) != ZoneResponse.HOLD_UP) {
      startCancelWindow(draft, partition);
    }
    if (!draft.is(ZoneFlag.OPEN, zone)) {
      Restores.atRest(draft, zone);
    }
  }

  private static void exitError(Draft draft, int zone, int partition) {
    draft.clear(ZoneFlag.EXIT_ERROR, zone);
    draft.enter(Behaviour.EXIT_ERROR_REPORTED, zone, 0);
    draft.emit(
        new Output.Signal(
            SignalCodes.EXIT_ERROR, SignalCodes.NEW, partition, zone, SystemModel.NONE));
    if (draft.tables.has(Option.EXIT_ERROR_BYPASS)) {
      draft.set(ZoneFlag.BYPASSED, zone);
      Bypassing.signal(
          draft,
          zone,
          SignalCodes.NEW,
          Behaviour.EXIT_ERROR_LEFT_OUT,
          Notice.LEFT_OUT,
          SystemModel.NONE);
    }
    draft.leave();
  }

  static void startCancelWindow(Draft draft, int partition) {
    draft.start(
        PartitionRegister.CANCEL_LEFT, partition, draft.tables.timing(TimingSetting.CANCEL_WINDOW));
  }

  /** The alarm is over and done with; a new one has an abort window of its own. */
  static void cancelWindowEnded(Draft draft, int partition) {
    draft.put(PartitionRegister.WAITED_REPORT_SENT, partition, 0);
  }

  /**
   * Somebody disarms or silences: what waits is dropped, what was sent is cancelled; never under
   * threat.
   */
  static void takeBack(Draft draft, int partition, int user) {
    boolean dropped = false;
    for (int zone : draft.tables.zonesOf(partition)) {
      dropped |= draft.is(ZoneFlag.PENDING, zone);
      draft.clear(ZoneFlag.PENDING, zone);
    }
    if (dropped) {
      draft.enter(Behaviour.ALARM_TAKEN_BACK, partition, 0);
      draft.given(PartitionRegister.ABORT_LEFT, partition);
      draft.emit(new Output.Display(partition, Notice.ALARM_STOPPED, partition, 0));
      draft.leave();
    }
    draft.stop(PartitionRegister.ABORT_LEFT, partition);
    draft.put(PartitionRegister.RECENT_PENDING, partition, 0);
    boolean duress = user != SystemModel.NONE && draft.tables.model.users().get(user).duress();
    if (draft.isRunning(PartitionRegister.CANCEL_LEFT, partition)) {
      draft.stop(PartitionRegister.CANCEL_LEFT, partition);
      if (duress) {
        return;
      }
      draft.enter(Behaviour.CANCELLED, partition, 0);
      draft.given(PartitionRegister.CANCEL_LEFT, partition);
      draft.emit(
          new Output.Signal(
              SignalCodes.CANCEL, SignalCodes.NEW, partition, SystemModel.NONE, user));
      draft.emit(new Output.Display(partition, Notice.CANCEL_SENT, partition, 0));
      draft.leave();
    }
  }
}
