package keenward.core.rehearsal;

/** Sounders and strobe: every partition asks for tones, the most urgent of all is given. */
final class Sounding {

  private static final Tone[] LOUDEST_FIRST = {
    Tone.FIRE, Tone.CARBON_MONOXIDE, Tone.BURGLARY, Tone.MEDICAL
  };

  private Sounding() {}

  private static PartitionRegister register(Tone tone) {
    return switch (tone) {
      case FIRE -> PartitionRegister.FIRE_LEFT;
      case CARBON_MONOXIDE -> PartitionRegister.GAS_LEFT;
      case MEDICAL -> PartitionRegister.MEDICAL_LEFT;
      case BURGLARY, SILENT -> PartitionRegister.BURGLARY_LEFT;
    };
  }

  private static int time(Draft draft, Tone tone) {
    int time =
        switch (tone) {
          case FIRE -> draft.tables.timing(TimingSetting.FIRE_SOUNDER_TIME);
          case CARBON_MONOXIDE -> 0;
          case BURGLARY, MEDICAL, SILENT -> draft.tables.timing(TimingSetting.SOUNDER_TIME);
        };
    return time == 0 ? Draft.UNTIL_SILENCED : time;
  }

  /** Starts a tone, or starts its time again. */
  static void start(Draft draft, int partition, Tone tone) {
    draft.start(register(tone), partition, time(draft, tone));
    draft.put(PartitionRegister.STROBE, partition, 1);
    refresh(draft);
  }

  static boolean isSounding(Draft draft, int partition) {
    for (Tone tone : LOUDEST_FIRST) {
      if (draft.isRunning(register(tone), partition)) {
        return true;
      }
    }
    return false;
  }

  /** A code silences everything in a partition. */
  static void silence(Draft draft, int partition) {
    for (Tone tone : LOUDEST_FIRST) {
      draft.stop(register(tone), partition);
    }
    draft.put(PartitionRegister.STROBE, partition, 0);
    draft.enter(Behaviour.SILENCED, partition, 0);
    refresh(draft);
    draft.leave();
  }

  /** A tone has run its time. */
  static void cutOff(Draft draft, Tone tone, int partition) {
    draft.enter(Behaviour.SOUNDER_CUT_OFF, partition, 0);
    if (draft.tables.has(Option.STROBE_STOPS_WITH_SOUNDER) && !isSounding(draft, partition)) {
      draft.put(PartitionRegister.STROBE, partition, 0);
    }
    refresh(draft);
    if (tone == Tone.BURGLARY) {
      Restores.cutOff(draft, partition);
    }
    draft.leave();
  }

  private static void refresh(Draft draft) {
    Tone tone = loudest(draft);
    if (draft.value(SystemRegister.TONE) != tone.slot()) {
      draft.put(SystemRegister.TONE, tone.slot());
      draft.emit(new Output.Sounder(tone));
    }
    int strobe = 0;
    for (int partition = 0; partition < draft.tables.partitions(); partition++) {
      strobe |= draft.value(PartitionRegister.STROBE, partition);
    }
    if (draft.value(SystemRegister.STROBE) != strobe) {
      draft.put(SystemRegister.STROBE, strobe);
      draft.emit(new Output.Strobe(strobe != 0));
    }
  }

  private static Tone loudest(Draft draft) {
    for (Tone tone : LOUDEST_FIRST) {
      for (int partition = 0; partition < draft.tables.partitions(); partition++) {
        if (draft.isRunning(register(tone), partition)) {
          return tone;
        }
      }
    }
    return Tone.SILENT;
  }
}
