package keenward.core.rehearsal;

import java.util.ArrayList;
import java.util.List;
import keenward.core.plan.ArmingMode;

/** Arming: who may, what stands in the way, what it sets going. */
final class Arming {

  private Arming() {}

  static void ordered(Draft draft, Input.Arm order) {
    if (!Access.admits(draft, order.keypad())) {
      return;
    }
    long allowed = draft.tables.mayArm(order.user());
    Way way = draft.tables.way(order.keypad());
    if (order.partition() != SystemModel.NONE) {
      int partition = order.partition();
      if (draft.tables.isCommon(partition)) {
        Access.refuse(
            draft, Behaviour.COMMON_AREA_REFUSED, order.keypad(), Notice.FOLLOWS_OTHERS, partition);
      } else if (!Bits.has(allowed, partition)) {
        Access.refuse(
            draft, Behaviour.NO_AUTHORITY, order.keypad(), Notice.NO_AUTHORITY, partition);
      } else {
        arm(draft, partition, order, way);
      }
      return;
    }
    boolean any = false;
    long reach = draft.tables.serves(order.keypad()) & allowed;
    for (int partition = 0; partition < draft.tables.partitions(); partition++) {
      if (Bits.has(reach, partition) && !draft.tables.isCommon(partition)) {
        any = true;
        arm(draft, partition, order, way);
      }
    }
    if (!any) {
      Access.refuseEverywhere(draft, order.keypad());
    }
  }

  private static void arm(Draft draft, int partition, Input.Arm order, Way way) {
    boolean forced =
        order.forced() || (way == Way.REMOTE && draft.tables.has(Option.REMOTE_ARMING_FORCES));
    if (draft.value(PartitionRegister.MODE, partition) == Modes.number(order.mode())) {
      Access.refuse(
          draft, Behaviour.ALREADY_ARMED, order.keypad(), Notice.ALREADY_ARMED, partition);
      return;
    }
    Order known = new Order(partition, order.mode(), order.user(), way, forced);
    List<Integer> obstacles = obstacles(draft, known);
    if (obstacles.isEmpty()) {
      begin(draft, known);
    }
    for (int zone : obstacles) {
      Notice notice = isTampered(draft, zone) ? Notice.OPEN_LID : Notice.OPEN_ZONE;
      Access.refuse(draft, Behaviour.OPEN_ZONE_REFUSES, order.keypad(), notice, zone);
    }
  }

  /** Arming a partition in a way that is settled. */
  record Order(int partition, ArmingMode mode, int user, Way way, boolean forced) {

    int modeNumber() {
      return Modes.number(mode);
    }
  }

  /** The zones that keep a partition, or a common area that would arm with it, from being armed. */
  static List<Integer> obstacles(Draft draft, Order order) {
    List<Integer> found = new ArrayList<>();
    addObstacles(draft, order.partition(), order.modeNumber(), order, found);
    for (int common = 0; common < draft.tables.partitions(); common++) {
      int mode = CommonAreas.modeOnceArmed(draft, common, order);
      if (mode != 0 && mode != draft.value(PartitionRegister.MODE, common)) {
        addObstacles(draft, common, mode, order, found);
      }
    }
    return found;
  }

  private static void addObstacles(
      Draft draft, int partition, int mode, Order order, List<Integer> found) {
    boolean exitTime = exitTime(draft, order.way()) > 0;
    for (int zone : draft.tables.zonesOf(partition)) {
      boolean obstacle =
          isTampered(draft, zone)
              || (isObstacle(draft, zone, mode, exitTime) && !leavesOut(draft, zone, order));
      if (obstacle && !draft.is(ZoneFlag.ISOLATED, zone)) {
        found.add(zone);
      }
    }
  }

  private static boolean isTampered(Draft draft, int zone) {
    return draft.is(ZoneFlag.LID_OPEN, zone) || draft.is(ZoneFlag.TAMPERED, zone);
  }

  private static boolean leavesOut(Draft draft, int zone, Order order) {
    return order.forced() && draft.tables.has(ZoneTrait.FORCEABLE, zone);
  }

  private static boolean isObstacle(Draft draft, int zone, int mode, boolean exitTime) {
    if (!draft.is(ZoneFlag.OPEN, zone) || draft.isLeftOut(zone)) {
      return false;
    }
    return switch (draft.tables.response(zone)) {
      case ENTRY_EXIT, FOLLOWER -> draft.tables.isLive(zone, mode) && !exitTime;
      case PERIMETER, INSTANT -> draft.tables.isLive(zone, mode);
      case TWENTY_FOUR_HOUR, TAMPER -> true;
      case HOLD_UP, FIRE, CARBON_MONOXIDE, MEDICAL, TECHNICAL, KEY_SWITCH -> false;
    };
  }

  static int exitTime(Draft draft, Way way) {
    boolean none =
        way == Way.AUTOMATIC
            || (way == Way.REMOTE && draft.tables.has(Option.REMOTE_ARMING_WITHOUT_EXIT_TIME));
    return none ? 0 : draft.tables.timing(TimingSetting.EXIT_TIME);
  }

  /** Arms a partition that nothing keeps from it, and then the common areas that wait for it. */
  static void begin(Draft draft, Order order) {
    draft.enter(Behaviour.ARMED, order.partition(), 0);
    begin(draft, order, exitTime(draft, order.way()));
    CommonAreas.follow(draft, order.partition());
    draft.leave();
  }

  /** Arms one partition with this exit time. */
  static void begin(Draft draft, Order order, int exitTenths) {
    int partition = order.partition();
    Swingers.reset(draft, partition);
    if (draft.isRunning(PartitionRegister.ENTRY_LEFT, partition)) {
      Entry.close(draft, partition);
    }
    boolean exitTime = exitTenths > 0;
    for (int zone : draft.tables.zonesOf(partition)) {
      draft.clear(ZoneFlag.ALARMED, zone);
      if (leavesOut(draft, zone, order) && isObstacle(draft, zone, order.modeNumber(), exitTime)) {
        draft.set(ZoneFlag.FORCED, zone);
        Bypassing.signal(
            draft, zone, SignalCodes.NEW, Behaviour.FORCED_OUT, Notice.LEFT_OUT, order.user());
      }
    }
    draft.put(PartitionRegister.MODE, partition, order.modeNumber());
    draft.put(PartitionRegister.USER, partition, order.user() + 1);
    draft.put(PartitionRegister.WAY, partition, order.way().slot());
    draft.put(PartitionRegister.CLOSING_SENT, partition, 0);
    draft.stop(PartitionRegister.EXIT_LEFT, partition);
    if (draft.tables.has(Option.CLOSING_SIGNAL_AT_START)) {
      Closings.closing(draft, partition, Behaviour.CLOSING_AT_START);
    }
    if (exitTime) {
      Exit.start(draft, partition, exitTenths);
    } else {
      Exit.armed(draft, partition);
    }
  }
}
