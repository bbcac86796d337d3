package keenward.core.rehearsal.planned;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import keenward.core.plan.PlanPath;
import keenward.core.plan.ZoneResponse;
import keenward.core.rehearsal.KeypadModel;
import keenward.core.rehearsal.PartitionModel;
import keenward.core.rehearsal.SystemModel;
import keenward.core.rehearsal.TimingSetting;
import keenward.core.rehearsal.UserModel;
import keenward.core.rehearsal.ZoneModel;

/**
 * What scenarios about one system share: who gives orders where, closing up in the evening, and the
 * small hours.
 */
final class Scene {

  static final int CLOSE_UP = 22 * 3600;

  /** More scenarios of one kind than this show nothing new, and nobody reads them. */
  static final int MOST_ALIKE = 12;

  /** Rooms that somebody walks through before it is clear what happens. */
  private static final int MOST_ROOMS = 12;

  private static final int HOUR = 3600;
  private static final int SECOND = 10;

  private final SystemModel model;
  private final SpokenNames names;
  private final List<Assumption> notRehearsed = new ArrayList<>();

  Scene(SystemModel model) {
    this.model = model;
    this.names = SpokenNames.of(model);
  }

  SystemModel model() {
    return model;
  }

  ScriptText script() {
    return new ScriptText(names);
  }

  int seconds(TimingSetting setting) {
    return Math.ceilDiv(model.timings().of(setting), SECOND);
  }

  /** Well after closing up: neither exit time nor recent closing window still run. */
  int night() {
    int settled =
        2 * seconds(TimingSetting.EXIT_TIME) + seconds(TimingSetting.RECENT_CLOSING_WINDOW) + 60;
    return CLOSE_UP + Math.max(HOUR, settled);
  }

  /**
   * Somebody who may arm and disarm a partition, and where; for a common area that of a partition
   * that shares it.
   */
  Optional<ScriptText.Order> order(int partition) {
    PartitionModel area = model.partitions().get(partition);
    int wanted = area.commonTo().isEmpty() ? partition : area.commonTo().getFirst();
    for (int user = 0; user < model.users().size(); user++) {
      UserModel each = model.users().get(user);
      if (each.mayArm().contains(wanted) && each.mayDisarm().contains(wanted) && !each.duress()) {
        return Optional.of(new ScriptText.Order(user, keypad(wanted)));
      }
    }
    return Optional.empty();
  }

  private int keypad(int partition) {
    for (int keypad = 0; keypad < model.keypads().size(); keypad++) {
      KeypadModel each = model.keypads().get(keypad);
      if (each.kind() == KeypadModel.Kind.KEYPAD && each.partitions().contains(partition)) {
        return keypad;
      }
    }
    return SystemModel.NONE;
  }

  /** The first of zones whose scenarios are all alike; the others are noted. */
  List<Integer> some(String what, List<Integer> zones) {
    if (zones.size() <= MOST_ALIKE) {
      return zones;
    }
    int more = zones.size() - MOST_ALIKE;
    notRehearsed.add(
        new Assumption(
            PlanPath.of("zones"),
            what
                + ": rehearsed at the first "
                + MOST_ALIKE
                + " zones; "
                + more
                + " more are alike, from zone "
                + model.zones().get(zones.get(MOST_ALIKE)).number()
                + " on, and wait for a script of yours"));
    return zones.subList(0, MOST_ALIKE);
  }

  /** What {@link #some} left out. */
  List<Assumption> notRehearsed() {
    return List.copyOf(notRehearsed);
  }

  List<Integer> zones(ZoneResponse... responses) {
    Set<ZoneResponse> wanted = Set.of(responses);
    List<Integer> found = new ArrayList<>();
    for (int zone = 0; zone < model.zones().size(); zone++) {
      if (wanted.contains(model.zones().get(zone).response())) {
        found.add(zone);
      }
    }
    return found;
  }

  /** The first entry/exit door of a partition, or of a common area that it shares. */
  Optional<Integer> exitDoor(int partition) {
    Optional<Integer> shared = Optional.empty();
    for (int zone : zones(ZoneResponse.ENTRY_EXIT)) {
      int area = model.zones().get(zone).partition();
      if (area == partition) {
        return Optional.of(zone);
      }
      if (shared.isEmpty() && model.partitions().get(area).commonTo().contains(partition)) {
        shared = Optional.of(zone);
      }
    }
    return shared;
  }

  /** The partitions that people arm themselves. */
  List<Integer> ownPartitions() {
    List<Integer> own = new ArrayList<>();
    for (int partition = 0; partition < model.partitions().size(); partition++) {
      if (model.partitions().get(partition).commonTo().isEmpty() && order(partition).isPresent()) {
        own.add(partition);
      }
    }
    return own;
  }

  /** Whether everything that a zone belongs to can be armed by somebody. */
  boolean isArmable(int zone) {
    int area = model.zones().get(zone).partition();
    List<Integer> sharers = model.partitions().get(area).commonTo();
    return isArmable(sharers.isEmpty() ? List.of(area) : sharers);
  }

  /** Whether somebody can arm each of these partitions. */
  boolean isArmable(List<Integer> partitions) {
    return ownPartitions().containsAll(partitions);
  }

  void arm(ScriptText script, String mode, int partition) {
    order(partition)
        .ifPresent(order ->
            script.line(
                "arm "
                    + mode
                    + " "
                    + script.partition(partition)
                    + " by "
                    + script.user(order.user())
                    + script.at(order)));
  }

  void disarm(ScriptText script, int partition) {
    order(partition)
        .ifPresent(order ->
            script.line(
                "disarm "
                    + script.partition(partition)
                    + " by "
                    + script.user(order.user())
                    + script.at(order)));
  }

  /** A code at the keypad of the zone's partition. */
  void code(ScriptText script, int zone) {
    order(model.zones().get(zone).partition())
        .ifPresent(order -> script.line("code " + script.user(order.user()) + script.at(order)));
  }

  /** Everything is armed away and everybody leaves by their door; afterwards it is night. */
  void closeUp(ScriptText script) {
    script.at(CLOSE_UP).comment("everything is armed away, and everybody leaves");
    Set<Integer> doors = new TreeSet<>();
    for (int partition : ownPartitions()) {
      arm(script, "away", partition);
      exitDoor(partition).ifPresent(doors::add);
    }
    script.later(5);
    for (int door : doors) {
      script.line("open " + script.zone(door) + " for 3 s");
    }
    script.at(night());
  }

  /** The first of the motion detectors, and other inside zones, behind the openings of an area. */
  List<Integer> inside(int area) {
    List<Integer> found = new ArrayList<>();
    for (int zone : zones(ZoneResponse.FOLLOWER, ZoneResponse.INSTANT)) {
      ZoneModel each = model.zones().get(zone);
      if (each.partition() == area) {
        found.add(zone);
        if (found.size() == MOST_ROOMS) {
          break;
        }
      }
    }
    return found;
  }
}
