package keenward.core.rehearsal;

/** Burglary and 24-hour alarms. */
final class Alarms {

  private Alarms() {}

  static void twentyFourHour(Draft draft, int zone) {
    if (Zones.isLeftOut(draft, zone)) {
      return;
    }
    if (Zones.isUnderWay(draft, zone)) {
      draft.emit(Behaviour.ALARM_UNDER_WAY, zone, 0, new Output.NoEffect(zone));
      return;
    }
    draft.enter(Behaviour.TWENTY_FOUR_HOUR_ALARM, zone, 0);
    raise(draft, zone);
    draft.leave();
  }

  /** A violation that counts; cross-zoning and the swinger limit may still stop the alarm. */
  static void raise(Draft draft, int zone) {
    if (!CrossZones.takes(draft, zone)) {
      count(draft, zone);
    }
  }

  /** An alarm of a zone, unless it has had its share. */
  static void count(Draft draft, int zone) {
    if (Swingers.admits(draft, zone)) {
      sound(draft, zone);
    }
  }

  /** The alarm of a zone is shown, heard and reported. */
  private static void sound(Draft draft, int zone) {
    int partition = draft.tables.partition(zone);
    draft.set(ZoneFlag.ALARMED, zone);
    draft.remember(draft.layout.alarmKey(zone));
    if (draft.tables.has(ZoneTrait.SILENT, zone)) {
      draft.emit(Behaviour.SILENT_ALARM, zone, 0, new Output.Log(Notice.ALARM, zone, 0));
    } else {
      draft.emit(new Output.Display(partition, Notice.ALARM, zone, 0));
      Sounding.start(draft, partition, Tone.BURGLARY);
    }
    Reporting.report(draft, zone);
  }
}
