package keenward.core.rehearsal;

import keenward.core.plan.ZoneResponse;

/** Violations of zones that are only live while armed. */
final class Intrusion {

  private Intrusion() {}

  /** Whether zones of a response are handled here. */
  static boolean isFor(ZoneResponse response) {
    return switch (response) {
      case ENTRY_EXIT, FOLLOWER, PERIMETER, INSTANT -> true;
      default -> false;
    };
  }

  static void violated(Draft draft, int zone) {
    int partition = draft.tables.partition(zone);
    int mode = draft.value(PartitionRegister.MODE, partition);
    if (mode == 0 || Zones.isLeftOut(draft, zone)) {
      return;
    }
    if (!draft.tables.isLive(zone, mode)) {
      draft.emit(Behaviour.NOT_LIVE, zone, 0, new Output.NoEffect(zone));
    } else if (draft.isRunning(PartitionRegister.EXIT_LEFT, partition)) {
      Exit.crossed(draft, zone);
    } else {
      violatedArmed(draft, zone);
    }
  }

  /** A live zone of an armed partition is violated and no exit time runs. */
  static void violatedArmed(Draft draft, int zone) {
    if (Zones.isUnderWay(draft, zone)) {
      draft.emit(Behaviour.ALARM_UNDER_WAY, zone, 0, new Output.NoEffect(zone));
      return;
    }
    ZoneResponse response = draft.tables.response(zone);
    if (response == ZoneResponse.FOLLOWER && Entry.releases(draft, zone)) {
      return;
    }
    int delay =
        draft.tables.delay(zone, draft.value(PartitionRegister.MODE, draft.tables.partition(zone)));
    if (delay > 0) {
      Entry.crossed(draft, zone, delay);
    } else {
      draft.enter(behaviour(response), zone, 0);
      Alarms.raise(draft, zone);
      draft.leave();
    }
  }

  private static Behaviour behaviour(ZoneResponse response) {
    return switch (response) {
      case FOLLOWER -> Behaviour.FOLLOWER_ALONE;
      case PERIMETER -> Behaviour.PERIMETER_ALARM;
      case ENTRY_EXIT -> Behaviour.ENTRY_WITHOUT_DELAY;
      default -> Behaviour.INSTANT_ALARM;
    };
  }
}
