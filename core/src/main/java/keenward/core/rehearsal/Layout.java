package keenward.core.rehearsal;

import java.util.ArrayList;
import java.util.List;
import keenward.core.plan.ZoneResponse;

/** Where each number of a system sits in its {@link State}, and which of them are timers. */
final class Layout {

  private static final int FLAGS = ZoneFlag.values().length;
  private static final int PARTITION_STRIDE = PartitionRegister.values().length;
  private static final int SYSTEM_STRIDE = SystemRegister.values().length;
  private static final int ABSENT = -1;

  private final int flagWords;
  private final int[] alarmCount;
  private final int[] holdLeft;
  private final int[] silentLeft;
  private final int[] windowLeft;
  private final int[] keypadBase;
  private final int registers;
  private final Timer[] timers;

  /** A register that counts down, and what it counts for. */
  record Timer(TimerKind kind, int register, int subject) {}

  Layout(SystemModel model) {
    int zones = model.zones().size();
    flagWords = (zones + Long.SIZE - 1) / Long.SIZE;
    alarmCount = new int[zones];
    holdLeft = new int[zones];
    silentLeft = new int[zones];
    windowLeft = new int[model.crossGroups().size()];
    keypadBase = new int[model.keypads().size()];
    int next = SYSTEM_STRIDE + PARTITION_STRIDE * model.partitions().size();
    for (int zone = 0; zone < zones; zone++) {
      ZoneModel each = model.zones().get(zone);
      alarmCount[zone] = each.swingerLimit() > 0 && mayBeShutOut(each.response()) ? next++ : ABSENT;
      holdLeft[zone] = each.holdTenths() > 0 ? next++ : ABSENT;
      silentLeft[zone] = each.traits().contains(ZoneTrait.RADIO) ? next++ : ABSENT;
    }
    for (int group = 0; group < windowLeft.length; group++) {
      windowLeft[group] = next;
      next += 2;
    }
    for (int keypad = 0; keypad < keypadBase.length; keypad++) {
      keypadBase[keypad] = next;
      next += 2;
    }
    registers = next;
    timers = timers(model);
  }

  /** Help for people is never shut out. */
  private static boolean mayBeShutOut(ZoneResponse response) {
    return switch (response) {
      case ENTRY_EXIT, FOLLOWER, PERIMETER, INSTANT, TWENTY_FOUR_HOUR -> true;
      default -> false;
    };
  }

  private Timer[] timers(SystemModel model) {
    List<Timer> found = new ArrayList<>();
    for (TimerKind kind : TimerKind.values()) {
      switch (kind) {
        case START_UP -> found.add(new Timer(kind, of(SystemRegister.START_UP_LEFT), 0));
        case HOLD -> addPresent(found, kind, holdLeft);
        case EXIT -> addPartitions(found, kind, PartitionRegister.EXIT_LEFT, model);
        case ENTRY -> addPartitions(found, kind, PartitionRegister.ENTRY_LEFT, model);
        case CROSS_WINDOW -> addPresent(found, kind, windowLeft);
        case VERIFICATION -> addPartitions(found, kind, PartitionRegister.VERIFY_LEFT, model);
        case ABORT -> addPartitions(found, kind, PartitionRegister.ABORT_LEFT, model);
        case BURGLARY_TONE -> addPartitions(found, kind, PartitionRegister.BURGLARY_LEFT, model);
        case FIRE_TONE -> addPartitions(found, kind, PartitionRegister.FIRE_LEFT, model);
        case GAS_TONE -> addPartitions(found, kind, PartitionRegister.GAS_LEFT, model);
        case MEDICAL_TONE -> addPartitions(found, kind, PartitionRegister.MEDICAL_LEFT, model);
        case GAS_REPEAT -> addPartitions(found, kind, PartitionRegister.GAS_REPEAT_LEFT, model);
        case RECENT_CLOSING -> addPartitions(found, kind, PartitionRegister.RECENT_LEFT, model);
        case CANCEL -> addPartitions(found, kind, PartitionRegister.CANCEL_LEFT, model);
        case SWINGER_RESET -> addPartitions(found, kind, PartitionRegister.SWINGER_LEFT, model);
        case SUPERVISION -> addPresent(found, kind, silentLeft);
        case MAINS_REPORT -> found.add(new Timer(kind, of(SystemRegister.MAINS_LEFT), 0));
        case BATTERY_TEST -> found.add(new Timer(kind, of(SystemRegister.BATTERY_TEST_LEFT), 0));
        case LOCK_OUT -> {
          for (int keypad = 0; keypad < keypadBase.length; keypad++) {
            found.add(new Timer(kind, lockLeft(keypad), keypad));
          }
        }
        case ARMING_WARNING ->
            addPartitions(found, kind, PartitionRegister.ARMING_WARNING_LEFT, model);
        case AUTOMATIC_ARMING -> addPartitions(found, kind, PartitionRegister.ARMING_LEFT, model);
      }
    }
    return found.toArray(new Timer[0]);
  }

  private static void addPresent(List<Timer> found, TimerKind kind, int[] registers) {
    for (int subject = 0; subject < registers.length; subject++) {
      if (registers[subject] != ABSENT) {
        found.add(new Timer(kind, registers[subject], subject));
      }
    }
  }

  private void addPartitions(
      List<Timer> found, TimerKind kind, PartitionRegister register, SystemModel model) {
    for (int partition = 0; partition < model.partitions().size(); partition++) {
      found.add(new Timer(kind, of(register, partition), partition));
    }
  }

  int flagWords() {
    return FLAGS * flagWords;
  }

  int registers() {
    return registers;
  }

  Timer[] timers() {
    return timers;
  }

  int word(ZoneFlag flag, int zone) {
    return flag.slot() * flagWords + (zone >> 6);
  }

  static long bit(int zone) {
    return 1L << zone;
  }

  int of(SystemRegister register) {
    return register.slot();
  }

  int of(PartitionRegister register, int partition) {
    return SYSTEM_STRIDE + PARTITION_STRIDE * partition + register.slot();
  }

  /** The alarms of a zone in this arming period; none when it has no limit. */
  int alarmCount(int zone) {
    return alarmCount[zone];
  }

  int holdLeft(int zone) {
    return holdLeft[zone];
  }

  /** None when the zone is not a radio device. */
  int silentLeft(int zone) {
    return silentLeft[zone];
  }

  int windowLeft(int group) {
    return windowLeft[group];
  }

  /** The zone that opened the window of a group, plus one. */
  int windowZone(int group) {
    return windowLeft[group] + 1;
  }

  int lockLeft(int keypad) {
    return keypadBase[keypad];
  }

  int wrongCodes(int keypad) {
    return keypadBase[keypad] + 1;
  }

  /**
   * The key under which the reasons for a zone's alarm are remembered; timers are remembered by
   * register.
   */
  int alarmKey(int zone) {
    return registers + zone;
  }
}
