package keenward.core.rehearsal;

/** Resetting latched detectors, and tampers that wait for a technician. */
final class Resetting {

  private Resetting() {}

  static void ordered(Draft draft, int user, int keypad) {
    if (!Access.admits(draft, keypad)) {
      return;
    }
    boolean technician = draft.tables.model.users().get(user).technician();
    for (int zone = 0; zone < draft.tables.zones(); zone++) {
      int partition = draft.tables.partition(zone);
      if (!technician && !reaches(draft, user, keypad, partition)) {
        continue;
      }
      if (draft.is(ZoneFlag.LATCHED, zone)) {
        resetDetector(draft, zone, partition);
      }
      if (draft.is(ZoneFlag.TAMPERED, zone)) {
        resetTamper(draft, zone, partition, keypad, technician);
      }
    }
  }

  private static boolean reaches(Draft draft, int user, int keypad, int partition) {
    long needed =
        draft.tables.isCommon(partition) ? draft.tables.sharers(partition) : 1L << partition;
    return (draft.tables.serves(keypad) & draft.tables.mayDisarm(user) & needed) != 0;
  }

  private static void resetDetector(Draft draft, int zone, int partition) {
    if (draft.is(ZoneFlag.OPEN, zone)) {
      draft.emit(
          Behaviour.DETECTOR_STILL_ACTIVE,
          zone,
          0,
          new Output.Display(partition, Notice.STILL_ACTIVE, zone, 0));
    } else {
      draft.clear(ZoneFlag.LATCHED, zone);
      draft.enter(Behaviour.DETECTOR_RESET, zone, 0);
      draft.emit(new Output.Log(Notice.DETECTOR_RESET, zone, 0));
      Restores.atRest(draft, zone);
      draft.leave();
    }
  }

  private static void resetTamper(
      Draft draft, int zone, int partition, int keypad, boolean technician) {
    if (!technician) {
      Access.refuse(
          draft, Behaviour.TECHNICIAN_NEEDED, keypad, Notice.TECHNICIAN_ONLY, SystemModel.NONE);
    } else if (!Tampers.reset(draft, zone)) {
      draft.emit(
          Behaviour.TAMPER_STILL_OPEN,
          zone,
          0,
          new Output.Display(partition, Notice.STILL_ACTIVE, zone, 0));
    }
  }
}
