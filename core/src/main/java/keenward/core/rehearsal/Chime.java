package keenward.core.rehearsal;

/** The chime at the keypads when a door is opened. */
final class Chime {

  private Chime() {}

  static void opened(Draft draft, int zone) {
    Tables tables = draft.tables;
    if (!tables.has(ZoneTrait.CHIME, zone)
        || (draft.isLeftOut(zone) && !tables.has(Option.CHIME_WHEN_BYPASSED))) {
      return;
    }
    int partition = tables.partition(zone);
    int mode = draft.value(PartitionRegister.MODE, partition);
    boolean stay = mode == Modes.STAY;
    if (mode == 0 || (stay && tables.has(Option.CHIME_IN_STAY))) {
      draft.emit(Behaviour.CHIMES, zone, 0, new Output.Annunciation(partition, Beep.CHIME, true));
    }
  }
}
