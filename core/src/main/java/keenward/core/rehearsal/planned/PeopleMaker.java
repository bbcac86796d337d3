package keenward.core.rehearsal.planned;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Partition;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.User;
import keenward.core.plan.UserRole;
import keenward.core.rehearsal.KeypadModel;
import keenward.core.rehearsal.UserModel;

/** Makes the users and keypads of the system. */
final class PeopleMaker {

  private final SitePlan plan;
  private final Areas areas;
  private final List<Assumption> assumptions;

  PeopleMaker(SitePlan plan, Areas areas, List<Assumption> assumptions) {
    this.plan = plan;
    this.areas = areas;
    this.assumptions = assumptions;
  }

  List<UserModel> users() {
    if (plan.users().isEmpty()) {
      assumptions.add(
          new Assumption(
              PlanPath.of("users"), "no users are named: somebody who may do everything is taken"));
      Set<Integer> all = allPartitions();
      return List.of(new UserModel(1, "Somebody", all, all, true, false, false));
    }
    List<UserModel> users = new ArrayList<>();
    for (User user : plan.users()) {
      users.add(user(user));
    }
    return users;
  }

  private Set<Integer> allPartitions() {
    List<String> names = new ArrayList<>();
    for (Partition partition : plan.partitions()) {
      names.add(partition.name());
    }
    return areas.indexes(names);
  }

  private UserModel user(User user) {
    UserRole role = user.role();
    Set<Integer> partitions = areas.indexes(user.partitions());
    boolean everyday = role == UserRole.MASTER || role == UserRole.USER;
    boolean disarms = everyday || role == UserRole.DURESS;
    boolean arms = disarms || role == UserRole.ARM_ONLY;
    return new UserModel(
        user.number(),
        user.name(),
        arms ? partitions : Set.of(),
        disarms ? partitions : Set.of(),
        user.mayBypass().orElse(everyday),
        role == UserRole.DURESS,
        role == UserRole.TECHNICIAN);
  }

  List<KeypadModel> keypads() {
    List<KeypadModel> keypads = new ArrayList<>();
    for (Device device : plan.devices()) {
      DeviceKind kind = device.kind();
      if (kind == DeviceKind.KEYPAD || kind == DeviceKind.FOB) {
        KeypadModel.Kind type =
            kind == DeviceKind.FOB ? KeypadModel.Kind.FOB : KeypadModel.Kind.KEYPAD;
        keypads.add(new KeypadModel(device.name(), type, served(device.name())));
      }
    }
    return keypads;
  }

  /** A partition that names no keypads is served by all. */
  private Set<Integer> served(String keypad) {
    Set<Integer> served = new TreeSet<>();
    for (Partition partition : plan.partitions()) {
      if (partition.keypads().isEmpty() || partition.keypads().contains(keypad)) {
        served.add(areas.index(partition.name()));
      }
    }
    return served;
  }
}
