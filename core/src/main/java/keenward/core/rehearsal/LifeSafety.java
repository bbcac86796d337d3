package keenward.core.rehearsal;

import keenward.core.plan.ZoneResponse;

/** Fire and carbon monoxide: live in every mode, heard above everything, reported at once. */
final class LifeSafety {

  private LifeSafety() {}

  static void fire(Draft draft, int zone) {
    if (Zones.isLeftOut(draft, zone)) {
      return;
    }
    int partition = draft.tables.partition(zone);
    if (Zones.isUnderWay(draft, zone)) {
      draft.emit(Behaviour.ALARM_UNDER_WAY, zone, 0, new Output.NoEffect(zone));
    } else if (!draft.tables.has(ZoneTrait.VERIFIED, zone) || isFireKnown(draft, partition)) {
      draft.enter(Behaviour.FIRE_ALARM, zone, 0);
      fireAlarm(draft, zone, partition);
      draft.leave();
    } else if (draft.isRunning(PartitionRegister.VERIFY_LEFT, partition)) {
      draft.enter(Behaviour.FIRE_VERIFIED, zone, 0);
      draft.given(PartitionRegister.VERIFY_LEFT, partition);
      fireAlarm(draft, zone, partition);
      draft.leave();
    } else {
      verify(draft, zone, partition);
    }
  }

  private static boolean isFireKnown(Draft draft, int partition) {
    for (int zone : draft.tables.zonesOf(partition)) {
      if (draft.tables.response(zone) == ZoneResponse.FIRE && draft.is(ZoneFlag.REPORTED, zone)) {
        return true;
      }
    }
    return false;
  }

  /**
   * The panel cuts the detector's power for a moment, which puts it to rest; still in smoke, it
   * comes again.
   */
  private static void verify(Draft draft, int zone, int partition) {
    int window = draft.tables.timing(TimingSetting.FIRE_VERIFICATION_WINDOW);
    draft.set(ZoneFlag.VERIFYING, zone);
    draft.clear(ZoneFlag.OPEN, zone);
    draft.enter(Behaviour.FIRE_LOOKED_AT_AGAIN, zone, window);
    draft.start(PartitionRegister.VERIFY_LEFT, partition, window);
    draft.emit(new Output.Display(partition, Notice.LOOKING_AGAIN, zone, window));
    draft.leave();
  }

  static void verificationEnded(Draft draft, int partition) {
    for (int zone : draft.tables.zonesOf(partition)) {
      if (draft.is(ZoneFlag.VERIFYING, zone)) {
        draft.clear(ZoneFlag.VERIFYING, zone);
        draft.emit(
            Behaviour.FIRE_NOT_VERIFIED, zone, 0, new Output.Log(Notice.SEEN_ALONE, zone, 0));
      }
    }
  }

  private static void fireAlarm(Draft draft, int zone, int partition) {
    draft.stop(PartitionRegister.VERIFY_LEFT, partition);
    for (int other : draft.tables.zonesOf(partition)) {
      draft.clear(ZoneFlag.VERIFYING, other);
    }
    draft.set(ZoneFlag.LATCHED, zone, draft.tables.has(ZoneTrait.LATCHING, zone));
    alarm(draft, zone, partition, Tone.FIRE);
  }

  static void gas(Draft draft, int zone) {
    if (Zones.isLeftOut(draft, zone)) {
      return;
    }
    if (Zones.isUnderWay(draft, zone)) {
      draft.emit(Behaviour.ALARM_UNDER_WAY, zone, 0, new Output.NoEffect(zone));
      return;
    }
    int partition = draft.tables.partition(zone);
    draft.stop(PartitionRegister.GAS_REPEAT_LEFT, partition);
    draft.enter(Behaviour.GAS_ALARM, zone, 0);
    alarm(draft, zone, partition, Tone.CARBON_MONOXIDE);
    draft.leave();
  }

  private static void alarm(Draft draft, int zone, int partition, Tone tone) {
    draft.set(ZoneFlag.ALARMED, zone);
    draft.emit(new Output.Display(partition, Notice.ALARM, zone, 0));
    Sounding.start(draft, partition, tone);
    Reporting.send(draft, zone);
  }

  /** A code has silenced the partition; gas that is still there is not forgotten. */
  static void silenced(Draft draft, int partition) {
    draft.stop(PartitionRegister.GAS_REPEAT_LEFT, partition);
    int zone = gasZone(draft, partition);
    if (zone != SystemModel.NONE) {
      int repeat = draft.tables.timing(TimingSetting.GAS_REPEAT);
      draft.enter(Behaviour.GAS_SILENCED, zone, repeat);
      draft.start(PartitionRegister.GAS_REPEAT_LEFT, partition, repeat);
      draft.emit(new Output.Display(partition, Notice.STILL_ACTIVE, zone, repeat));
      draft.leave();
    }
  }

  /** A detector of a partition that still sees gas; none if there is none. */
  private static int gasZone(Draft draft, int partition) {
    for (int zone : draft.tables.zonesOf(partition)) {
      if (draft.tables.response(zone) == ZoneResponse.CARBON_MONOXIDE
          && draft.is(ZoneFlag.OPEN, zone)
          && draft.is(ZoneFlag.REPORTED, zone)) {
        return zone;
      }
    }
    return SystemModel.NONE;
  }

  static void gasRepeats(Draft draft, int partition) {
    int zone = gasZone(draft, partition);
    if (zone != SystemModel.NONE) {
      draft.enter(Behaviour.GAS_SOUNDS_AGAIN, zone, 0);
      Sounding.start(draft, partition, Tone.CARBON_MONOXIDE);
      draft.leave();
    }
  }
}
