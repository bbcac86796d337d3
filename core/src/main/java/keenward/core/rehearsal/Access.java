package keenward.core.rehearsal;

import keenward.core.plan.ArmingMode;

/** Codes at keypads, and who may do what. */
final class Access {

  private Access() {}

  /** Whether a keypad takes an order; says so if not. */
  static boolean admits(Draft draft, int keypad) {
    if (draft.value(SystemRegister.PROGRAMMING) != 0) {
      refuse(
          draft, Behaviour.PROGRAMMING_REFUSES, keypad, Notice.PROGRAMMING_OPEN, SystemModel.NONE);
      return false;
    }
    if (isLocked(draft, keypad)) {
      refuse(draft, Behaviour.LOCKED_OUT_REFUSES, keypad, Notice.LOCKED_OUT, keypad);
      return false;
    }
    if (keypad != SystemModel.NONE) {
      draft.put(draft.layout.wrongCodes(keypad), 0);
    }
    return true;
  }

  private static boolean isLocked(Draft draft, int keypad) {
    return keypad != SystemModel.NONE && draft.value(draft.layout.lockLeft(keypad)) != 0;
  }

  static void refuse(Draft draft, Behaviour behaviour, int keypad, Notice notice, int subject) {
    draft.emit(behaviour, subject, 0, new Output.Refused(keypad, notice, subject));
  }

  /** Keypad and user have no partition in common. */
  static void refuseEverywhere(Draft draft, int keypad) {
    refuse(
        draft,
        Behaviour.NO_AUTHORITY_ANYWHERE,
        keypad,
        Notice.NO_AUTHORITY_ANYWHERE,
        SystemModel.NONE);
  }

  /** A code and nothing else: ends what there is to end, and otherwise shows how things are. */
  static void code(Draft draft, int user, int keypad) {
    if (!admits(draft, keypad)) {
      return;
    }
    Way way = draft.tables.way(keypad);
    boolean needed = false;
    boolean ended = false;
    for (int partition = 0; partition < draft.tables.partitions(); partition++) {
      boolean common = draft.tables.isCommon(partition);
      boolean served = Bits.has(draft.tables.serves(keypad), partition);
      if (served && !common && isNeededHere(draft, partition)) {
        needed = true;
        if (Disarming.reaches(draft, user, keypad, partition)) {
          Disarming.disarm(draft, partition, user, way);
          if (!ended) {
            Disarming.duress(draft, partition, user);
          }
          ended = true;
        }
      }
    }
    if (needed && !ended) {
      refuseEverywhere(draft, keypad);
    } else if (!needed && draft.tables.has(Option.CODE_ALONE_ARMS)) {
      Arming.ordered(draft, new Input.Arm(user, keypad, SystemModel.NONE, ArmingMode.AWAY, false));
    } else if (!needed) {
      showStatus(draft, keypad);
    }
  }

  /** A common area that sounds is silenced through the partitions that share it. */
  private static boolean isNeededHere(Draft draft, int partition) {
    if (Disarming.isNeeded(draft, partition)) {
      return true;
    }
    for (int common = 0; common < draft.tables.partitions(); common++) {
      if (Bits.has(draft.tables.commons(partition), common) && Disarming.isNeeded(draft, common)) {
        return true;
      }
    }
    return false;
  }

  private static void showStatus(Draft draft, int keypad) {
    for (int partition = 0; partition < draft.tables.partitions(); partition++) {
      if (Bits.has(draft.tables.serves(keypad), partition)) {
        int open = openZone(draft, partition);
        boolean ready = open == SystemModel.NONE;
        draft.emit(
            Behaviour.STATUS_SHOWN,
            partition,
            0,
            new Output.Display(
                partition, ready ? Notice.READY : Notice.NOT_READY, ready ? partition : open, 0));
      }
    }
  }

  private static int openZone(Draft draft, int partition) {
    for (int zone : draft.tables.zonesOf(partition)) {
      if (draft.is(ZoneFlag.OPEN, zone) && !draft.isLeftOut(zone)) {
        return zone;
      }
    }
    return SystemModel.NONE;
  }

  static void wrongCode(Draft draft, int keypad) {
    if (isLocked(draft, keypad)) {
      refuse(draft, Behaviour.LOCKED_OUT_REFUSES, keypad, Notice.LOCKED_OUT, keypad);
      return;
    }
    refuse(draft, Behaviour.WRONG_CODE, keypad, Notice.WRONG_CODE, keypad);
    int limit = draft.tables.timing(TimingSetting.WRONG_CODE_LIMIT);
    int wrong = draft.value(draft.layout.wrongCodes(keypad)) + 1;
    if (limit == 0 || draft.tables.way(keypad) != Way.KEYPAD) {
      return;
    }
    if (wrong < limit) {
      draft.put(draft.layout.wrongCodes(keypad), wrong);
      return;
    }
    int lock = draft.tables.timing(TimingSetting.KEYPAD_LOCK_OUT);
    draft.put(draft.layout.wrongCodes(keypad), 0);
    draft.enter(Behaviour.LOCKED_OUT, keypad, lock);
    draft.start(draft.layout.lockLeft(keypad), lock);
    draft.emit(Supplies.system(SignalCodes.WRONG_CODE, SignalCodes.NEW));
    draft.leave();
  }

  static void lockOutEnded(Draft draft, int keypad) {
    draft.emit(
        Behaviour.LOCK_OUT_ENDED, keypad, 0, new Output.Log(Notice.LISTENS_AGAIN, keypad, 0));
  }
}
