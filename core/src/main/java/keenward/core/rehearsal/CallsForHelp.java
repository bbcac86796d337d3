package keenward.core.rehearsal;

/**
 * People ask for help: live in every mode, reported at once, never taken back by the abort window.
 */
final class CallsForHelp {

  private CallsForHelp() {}

  static void holdUp(Draft draft, int zone) {
    if (cannotAsk(draft, zone)) {
      return;
    }
    boolean silent = draft.tables.has(ZoneTrait.SILENT, zone);
    draft.enter(silent ? Behaviour.SILENT_HOLD_UP : Behaviour.AUDIBLE_HOLD_UP, zone, 0);
    if (silent) {
      draft.emit(new Output.Log(Notice.ALARM, zone, 0));
      Reporting.send(draft, zone);
    } else {
      alarm(draft, zone, Tone.BURGLARY);
    }
    draft.leave();
  }

  static void medical(Draft draft, int zone) {
    if (cannotAsk(draft, zone)) {
      return;
    }
    draft.enter(Behaviour.MEDICAL_ALARM, zone, 0);
    alarm(draft, zone, Tone.MEDICAL);
    draft.leave();
  }

  private static boolean cannotAsk(Draft draft, int zone) {
    if (Zones.isLeftOut(draft, zone)) {
      return true;
    }
    boolean underWay = Zones.isUnderWay(draft, zone);
    if (underWay) {
      draft.emit(Behaviour.ALARM_UNDER_WAY, zone, 0, new Output.NoEffect(zone));
    }
    return underWay;
  }

  private static void alarm(Draft draft, int zone, Tone tone) {
    int partition = draft.tables.partition(zone);
    draft.set(ZoneFlag.ALARMED, zone);
    draft.emit(new Output.Display(partition, Notice.ALARM, zone, 0));
    Sounding.start(draft, partition, tone);
    Reporting.send(draft, zone);
  }
}
