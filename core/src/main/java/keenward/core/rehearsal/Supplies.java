package keenward.core.rehearsal;

/** Mains and standby battery. */
final class Supplies {

  private static final int ALL = SystemModel.NONE;

  private Supplies() {}

  static void mains(Draft draft, boolean present) {
    boolean absent = draft.value(SystemRegister.MAINS_ABSENT) != 0;
    if (absent != present) {
      return;
    }
    draft.put(SystemRegister.MAINS_ABSENT, present ? 0 : 1);
    if (present) {
      mainsBack(draft);
    } else {
      int delay = draft.tables.timing(TimingSetting.MAINS_REPORT_DELAY);
      draft.enter(Behaviour.MAINS_ABSENT, SystemModel.NONE, delay);
      draft.emit(new Output.Display(ALL, Notice.MAINS_ABSENT, SystemModel.NONE, 0));
      draft.start(draft.layout.of(SystemRegister.MAINS_LEFT), delay);
      if (delay == 0) {
        mainsReportDue(draft);
      }
      draft.leave();
    }
  }

  private static void mainsBack(Draft draft) {
    draft.put(SystemRegister.MAINS_LEFT, 0);
    draft.emit(
        Behaviour.MAINS_BACK,
        SystemModel.NONE,
        0,
        new Output.Display(ALL, Notice.MAINS_BACK, SystemModel.NONE, 0));
    if (draft.value(SystemRegister.MAINS_REPORTED) != 0) {
      draft.put(SystemRegister.MAINS_REPORTED, 0);
      signal(draft, Behaviour.MAINS_RESTORE_REPORTED, SignalCodes.MAINS_LOST, SignalCodes.RESTORE);
    }
  }

  static void mainsReportDue(Draft draft) {
    draft.put(SystemRegister.MAINS_REPORTED, 1);
    signal(draft, Behaviour.MAINS_LOSS_REPORTED, SignalCodes.MAINS_LOST, SignalCodes.NEW);
  }

  static void battery(Draft draft, boolean low) {
    draft.put(SystemRegister.BATTERY_LOW, low ? 1 : 0);
    if (low && draft.value(SystemRegister.BATTERY_REPORTED) == 0) {
      draft.put(SystemRegister.BATTERY_REPORTED, 1);
      draft.enter(Behaviour.BATTERY_LOW, SystemModel.NONE, 0);
      draft.emit(new Output.Display(ALL, Notice.BATTERY_LOW, SystemModel.NONE, 0));
      draft.emit(system(SignalCodes.BATTERY_LOW, SignalCodes.NEW));
      startTest(draft);
      draft.leave();
    }
  }

  private static void startTest(Draft draft) {
    draft.start(
        draft.layout.of(SystemRegister.BATTERY_TEST_LEFT),
        draft.tables.timing(TimingSetting.BATTERY_TEST_INTERVAL));
  }

  static void batteryTested(Draft draft) {
    if (draft.value(SystemRegister.BATTERY_LOW) != 0) {
      startTest(draft);
      return;
    }
    draft.put(SystemRegister.BATTERY_REPORTED, 0);
    draft.enter(Behaviour.BATTERY_TESTED_GOOD, SystemModel.NONE, 0);
    draft.emit(new Output.Display(ALL, Notice.BATTERY_GOOD, SystemModel.NONE, 0));
    draft.emit(system(SignalCodes.BATTERY_LOW, SignalCodes.RESTORE));
    draft.leave();
  }

  private static void signal(Draft draft, Behaviour behaviour, int code, int qualifier) {
    draft.emit(behaviour, SystemModel.NONE, 0, system(code, qualifier));
  }

  static Output.Signal system(int code, int qualifier) {
    return new Output.Signal(code, qualifier, SystemModel.NONE, SystemModel.NONE, SystemModel.NONE);
  }
}
