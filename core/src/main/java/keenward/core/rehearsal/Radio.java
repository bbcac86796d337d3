package keenward.core.rehearsal;

/** Supervision of radio devices. */
final class Radio {

  private Radio() {}

  static void lost(Draft draft, int zone) {
    int left = draft.layout.silentLeft(zone);
    if (left == SystemModel.NONE) {
      draft.emit(Behaviour.NOT_A_RADIO_DEVICE, zone, 0, new Output.NoEffect(zone));
    } else if (draft.value(left) == 0 && !draft.is(ZoneFlag.MISSING, zone)) {
      int tenths = draft.tables.timing(TimingSetting.RADIO_SUPERVISION);
      draft.enter(Behaviour.SUPERVISION_STARTED, zone, tenths);
      draft.start(left, tenths);
      draft.leave();
    }
  }

  /** Any message will do. */
  static void heard(Draft draft, int zone) {
    int left = draft.layout.silentLeft(zone);
    if (left == SystemModel.NONE) {
      return;
    }
    draft.put(left, 0);
    if (draft.is(ZoneFlag.MISSING, zone)) {
      int partition = draft.tables.partition(zone);
      draft.clear(ZoneFlag.MISSING, zone);
      draft.enter(Behaviour.HEARD_AGAIN, zone, 0);
      draft.emit(new Output.Display(partition, Notice.HEARD_AGAIN, zone, 0));
      signal(draft, zone, SignalCodes.RADIO_LOST, SignalCodes.RESTORE);
      draft.leave();
    }
  }

  static void supervisionEnded(Draft draft, int zone) {
    int partition = draft.tables.partition(zone);
    draft.set(ZoneFlag.MISSING, zone);
    draft.enter(Behaviour.MISSING, zone, 0);
    Technical.showTrouble(draft, zone, Notice.MISSING);
    signal(draft, zone, SignalCodes.RADIO_LOST, SignalCodes.NEW);
    draft.leave();
    if (draft.isArmed(partition)
        && !draft.isLeftOut(zone)
        && draft.tables.has(Option.MISSING_ALARMS_WHEN_ARMED)) {
      draft.enter(Behaviour.MISSING_ALARM, zone, 0);
      draft.set(ZoneFlag.ALARMED, zone);
      draft.emit(new Output.Display(partition, Notice.ALARM, zone, 0));
      Sounding.start(draft, partition, Tone.BURGLARY);
      Reporting.startCancelWindow(draft, partition);
      signal(draft, zone, SignalCodes.RADIO_LOST_ALARM, SignalCodes.NEW);
      draft.leave();
    }
  }

  static void cell(Draft draft, int zone, boolean low) {
    if (draft.is(ZoneFlag.CELL_LOW, zone) == low) {
      return;
    }
    draft.set(ZoneFlag.CELL_LOW, zone, low);
    draft.enter(low ? Behaviour.CELL_LOW : Behaviour.CELL_GOOD, zone, 0);
    if (low) {
      Technical.showTrouble(draft, zone, Notice.CELL_LOW);
    }
    signal(draft, zone, SignalCodes.CELL_LOW, low ? SignalCodes.NEW : SignalCodes.RESTORE);
    draft.leave();
  }

  private static void signal(Draft draft, int zone, int code, int qualifier) {
    draft.emit(
        new Output.Signal(code, qualifier, draft.tables.partition(zone), zone, SystemModel.NONE));
  }
}
