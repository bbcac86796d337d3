package keenward.core.rehearsal;

/** Plant that is watched: shown and reported, no sounder. */
final class Technical {

  private Technical() {}

  static void limitPassed(Draft draft, int zone) {
    if (Zones.isLeftOut(draft, zone)) {
      return;
    }
    if (Zones.isUnderWay(draft, zone)) {
      draft.emit(Behaviour.ALARM_UNDER_WAY, zone, 0, new Output.NoEffect(zone));
      return;
    }
    draft.enter(Behaviour.TECHNICAL_ALARM, zone, 0);
    showTrouble(draft, zone, Notice.TROUBLE);
    Reporting.send(draft, zone);
    draft.leave();
  }

  /** Shows a trouble of a zone and beeps once. */
  static void showTrouble(Draft draft, int zone, Notice notice) {
    int partition = draft.tables.partition(zone);
    draft.emit(new Output.Display(partition, notice, zone, 0));
    draft.emit(new Output.Annunciation(partition, Beep.TROUBLE, true));
  }
}
