package keenward.core.rehearsal;

/** When zones are not watched: while programming is open, and while the panel starts. */
final class Suspension {

  private static final int ALL = SystemModel.NONE;

  private Suspension() {}

  static void programming(Draft draft, boolean open) {
    boolean isOpen = draft.value(SystemRegister.PROGRAMMING) != 0;
    if (open == isOpen) {
      return;
    }
    if (open) {
      draft.put(SystemRegister.PROGRAMMING, 1);
      draft.enter(Behaviour.PROGRAMMING_OPENED, SystemModel.NONE, 0);
      draft.emit(new Output.Display(ALL, Notice.PROGRAMMING_OPEN, SystemModel.NONE, 0));
      draft.emit(Supplies.system(SignalCodes.PROGRAMMING_ENTERED, SignalCodes.NEW));
      draft.leave();
    } else {
      leave(draft);
    }
  }

  private static void leave(Draft draft) {
    int open = openAlwaysLiveZone(draft);
    if (open != SystemModel.NONE && draft.tables.has(Option.PROGRAMMING_STAYS_WHILE_OPEN)) {
      Access.refuse(draft, Behaviour.LEAVING_REFUSED, SystemModel.NONE, Notice.OPEN_ZONE, open);
      return;
    }
    draft.put(SystemRegister.PROGRAMMING, 0);
    draft.enter(Behaviour.PROGRAMMING_LEFT, SystemModel.NONE, 0);
    draft.emit(new Output.Display(ALL, Notice.PROGRAMMING_LEFT, SystemModel.NONE, 0));
    draft.emit(Supplies.system(SignalCodes.PROGRAMMING_LEFT, SignalCodes.NEW));
    if (draft.tables.has(Option.RESTART_AFTER_PROGRAMMING)) {
      restart(draft);
    } else {
      Zones.lookAtAll(draft);
    }
    draft.leave();
  }

  private static int openAlwaysLiveZone(Draft draft) {
    for (int zone = 0; zone < draft.tables.zones(); zone++) {
      if (draft.is(ZoneFlag.OPEN, zone)
          && draft.tables.response(zone).isAlwaysLive()
          && !draft.isLeftOut(zone)) {
        return zone;
      }
    }
    return SystemModel.NONE;
  }

  /** The panel starts again. Timers are lost; an alarm that waited to be reported is not. */
  static void restart(Draft draft) {
    int startUp = draft.tables.timing(TimingSetting.START_UP_TIME);
    draft.put(SystemRegister.PROGRAMMING, 0);
    draft.enter(Behaviour.RESTARTED, SystemModel.NONE, startUp);
    draft.emit(Supplies.system(SignalCodes.RESTARTED, SignalCodes.NEW));
    for (int partition = 0; partition < draft.tables.partitions(); partition++) {
      Reporting.abortWindowEnded(draft, partition);
      if (draft.isRunning(PartitionRegister.ENTRY_LEFT, partition)) {
        Entry.close(draft, partition);
      }
      Sounding.silence(draft, partition);
    }
    for (Layout.Timer timer : draft.layout.timers()) {
      if (isLost(timer.kind())) {
        draft.put(timer.register(), 0);
      }
    }
    for (int group = 0; group < draft.tables.model.crossGroups().size(); group++) {
      draft.put(draft.layout.windowZone(group), 0);
    }
    for (int zone = 0; zone < draft.tables.zones(); zone++) {
      draft.clear(ZoneFlag.VERIFYING, zone);
      draft.clear(ZoneFlag.EXIT_ERROR, zone);
    }
    if (!draft.tables.has(Option.RESTART_KEEPS_ARMED)) {
      dropArmed(draft);
    }
    draft.emit(new Output.Display(ALL, Notice.STARTING_UP, SystemModel.NONE, startUp));
    draft.start(draft.layout.of(SystemRegister.START_UP_LEFT), startUp);
    if (startUp == 0) {
      startedUp(draft);
    }
    draft.leave();
  }

  /** The clock, the state of the supplies and the silence of radio devices outlast a restart. */
  private static boolean isLost(TimerKind kind) {
    return switch (kind) {
      case SUPERVISION, MAINS_REPORT, BATTERY_TEST, ARMING_WARNING, AUTOMATIC_ARMING -> false;
      default -> true;
    };
  }

  private static void dropArmed(Draft draft) {
    for (int partition = 0; partition < draft.tables.partitions(); partition++) {
      if (draft.isArmed(partition)) {
        draft.enter(Behaviour.RESTART_DROPS_ARMED, partition, 0);
        Disarming.disarm(draft, partition, SystemModel.NONE, Way.AUTOMATIC);
        draft.leave();
      }
    }
  }

  static void startedUp(Draft draft) {
    draft.enter(Behaviour.STARTED_UP, SystemModel.NONE, 0);
    draft.emit(new Output.Display(ALL, Notice.STARTED, SystemModel.NONE, 0));
    Zones.lookAtAll(draft);
    draft.leave();
  }
}
