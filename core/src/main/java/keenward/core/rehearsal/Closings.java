package keenward.core.rehearsal;

/** Opening and closing signals. */
final class Closings {

  private Closings() {}

  static void closing(Draft draft, int partition, Behaviour behaviour) {
    Way way = Way.of(draft.value(PartitionRegister.WAY, partition));
    int mode = draft.value(PartitionRegister.MODE, partition);
    int user = draft.value(PartitionRegister.USER, partition) - 1;
    draft.put(PartitionRegister.CLOSING_SENT, partition, 1);
    draft.emit(
        behaviour,
        partition,
        0,
        new Output.Signal(code(way, mode), SignalCodes.RESTORE, partition, SystemModel.NONE, user));
  }

  static void opening(Draft draft, int partition, int mode, Way way, int user) {
    draft.emit(
        Behaviour.OPENING,
        partition,
        0,
        new Output.Signal(code(way, mode), SignalCodes.NEW, partition, SystemModel.NONE, user));
  }

  private static int code(Way way, int mode) {
    return switch (way) {
      case REMOTE -> SignalCodes.REMOTE;
      case AUTOMATIC -> SignalCodes.AUTOMATIC;
      case KEY_SWITCH -> SignalCodes.KEY_SWITCH;
      case KEYPAD, FOB -> mode == Modes.AWAY ? SignalCodes.BY_USER : SignalCodes.STAY_BY_USER;
    };
  }
}
