package keenward.core.rehearsal;

import java.util.List;
import keenward.core.plan.ArmingMode;

/** Arming by the clock, with a warning before it. */
final class AutomaticArming {

  private static final int DAY_TENTHS = 864_000;

  private AutomaticArming() {}

  /** Works out when each partition is due next. */
  static void schedule(Draft draft, int timeOfDayTenths) {
    for (int partition = 0; partition < draft.tables.partitions(); partition++) {
      int due = draft.tables.model.partitions().get(partition).automaticArmingTenths();
      if (due != PartitionModel.NEVER) {
        int left = Math.floorMod(due - timeOfDayTenths, DAY_TENTHS);
        dueIn(draft, partition, left == 0 ? DAY_TENTHS : left);
      }
    }
  }

  private static void dueIn(Draft draft, int partition, int tenths) {
    int warning = draft.tables.timing(TimingSetting.AUTOMATIC_ARMING_WARNING);
    draft.start(PartitionRegister.ARMING_LEFT, partition, tenths);
    draft.put(
        PartitionRegister.ARMING_WARNING_LEFT,
        partition,
        warning == 0 ? 0 : Math.max(tenths - warning, 0));
  }

  static void warn(Draft draft, int partition) {
    if (draft.isArmed(partition)) {
      return;
    }
    int warning = draft.tables.timing(TimingSetting.AUTOMATIC_ARMING_WARNING);
    draft.enter(Behaviour.ARMING_WARNED, partition, warning);
    draft.emit(new Output.Annunciation(partition, Beep.ARMING_WARNING, true));
    draft.emit(new Output.Display(partition, Notice.ARMS_SOON, partition, warning));
    draft.leave();
  }

  static void due(Draft draft, int partition) {
    int postponed = draft.value(PartitionRegister.POSTPONED, partition);
    draft.put(PartitionRegister.POSTPONED, partition, 0);
    dueIn(draft, partition, DAY_TENTHS - postponed);
    if (draft.isArmed(partition)) {
      return;
    }
    Arming.Order order =
        new Arming.Order(
            partition,
            ArmingMode.AWAY,
            SystemModel.NONE,
            Way.AUTOMATIC,
            draft.tables.has(Option.REMOTE_ARMING_FORCES));
    List<Integer> obstacles = Arming.obstacles(draft, order);
    draft.enter(Behaviour.ARMS_BY_ITSELF, partition, 0);
    draft.emit(new Output.Annunciation(partition, Beep.ARMING_WARNING, false));
    if (obstacles.isEmpty()) {
      Arming.begin(draft, order);
    } else {
      draft.enter(Behaviour.AUTOMATIC_ARMING_FAILED, obstacles.getFirst(), 0);
      draft.emit(new Output.Display(partition, Notice.ARMING_FAILED, obstacles.getFirst(), 0));
      draft.emit(
          new Output.Signal(
              SignalCodes.AUTOMATIC_ARMING_FAILED,
              SignalCodes.NEW,
              partition,
              SystemModel.NONE,
              SystemModel.NONE));
      draft.leave();
    }
    draft.leave();
  }

  static void postponed(Draft draft, int user, int keypad, int tenths) {
    if (!Access.admits(draft, keypad)) {
      return;
    }
    long reach = draft.tables.serves(keypad) & draft.tables.mayArm(user);
    boolean any = false;
    for (int partition = 0; partition < draft.tables.partitions(); partition++) {
      int left = draft.value(PartitionRegister.ARMING_LEFT, partition);
      int soFar = draft.value(PartitionRegister.POSTPONED, partition);
      if (Bits.has(reach, partition) && left > 0 && tenths < DAY_TENTHS - soFar) {
        any = true;
        draft.put(PartitionRegister.POSTPONED, partition, soFar + tenths);
        draft.enter(Behaviour.ARMING_POSTPONED, partition, tenths);
        draft.emit(new Output.Annunciation(partition, Beep.ARMING_WARNING, false));
        draft.emit(new Output.Display(partition, Notice.ARMING_POSTPONED, partition, tenths));
        dueIn(draft, partition, left + tenths);
        draft.leave();
      }
    }
    if (!any) {
      Access.refuse(draft, Behaviour.NO_ARMING_DUE, keypad, Notice.NO_ARMING_DUE, SystemModel.NONE);
    }
  }

  /** The time that is left changes with the clock; an hour that comes twice arms once. */
  static void clockSet(Draft draft, int tenths) {
    for (int partition = 0; partition < draft.tables.partitions(); partition++) {
      int left = draft.value(PartitionRegister.ARMING_LEFT, partition);
      if (left <= 0) {
        continue;
      }
      if (left > tenths) {
        dueIn(draft, partition, left - tenths);
      } else {
        due(draft, partition);
        dueIn(
            draft,
            partition,
            draft.value(PartitionRegister.ARMING_LEFT, partition) + left - tenths);
      }
    }
  }
}
