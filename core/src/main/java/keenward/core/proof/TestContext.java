package keenward.core.proof;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Fact;
import keenward.core.plan.Floor;
import keenward.core.plan.Monitoring;
import keenward.core.plan.Partition;
import keenward.core.plan.Setting;
import keenward.core.plan.Settings;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.reporting.Qualifier;

/** What every part of a test plan asks of the plan. */
final class TestContext {
  private final SitePlan plan;
  private final Settings settings;
  private final Optional<Monitoring> monitoring;

  TestContext(SitePlan plan, Map<Setting, Long> panelDefaults) {
    this.plan = plan;
    this.settings = Settings.of(plan, panelDefaults);
    this.monitoring = plan.monitoring().find();
  }

  SitePlan plan() {
    return plan;
  }

  Settings settings() {
    return settings;
  }

  Optional<Monitoring> monitoring() {
    return monitoring;
  }

  Optional<String> account() {
    return monitoring.flatMap(each -> each.account().find());
  }

  /** The monitoring centre as people call it. */
  String centre() {
    return monitoring.flatMap(each -> each.centre().find()).orElse("the monitoring centre");
  }

  Optional<Place> place(Fact<String> room) {
    return room.find()
        .map(name -> new Place(plan.findFloorOfRoom(name).map(Floor::name).orElse(""), name));
  }

  /** The first partition of a zone, under whose number it reports. */
  Partition partition(Zone zone) {
    return plan.findPartition(zone.partitions().getFirst()).orElse(plan.partitions().getFirst());
  }

  /** The keypads of a partition in words. */
  String keypads(Partition partition) {
    List<String> names =
        partition.keypads().isEmpty()
            ? plan.devicesOf(DeviceKind.KEYPAD).map(Device::name).toList()
            : partition.keypads();
    return names.isEmpty() ? "the keypad" : String.join(" or ", names);
  }

  /** The zone of lowest number that uses any input of a device. */
  Optional<Zone> zoneOf(Device device) {
    return plan.zones().stream()
        .filter(zone ->
            zone.devices().stream()
                .anyMatch(each ->
                    each instanceof ZoneDevice.Fitted fitted && fitted.device().equals(device)))
        .min((one, other) -> Integer.compare(one.number(), other.number()));
  }

  ExpectedSignal signal(Qualifier qualifier, int code, int partition, int zoneOrUser) {
    return signal(qualifier, code, List.of(), partition, OptionalInt.of(zoneOrUser), "");
  }

  ExpectedSignal signal(
      Qualifier qualifier,
      int code,
      List<Integer> otherCodes,
      int partition,
      OptionalInt zoneOrUser,
      String when) {
    return new ExpectedSignal(account(), qualifier, code, otherCodes, partition, zoneOrUser, when);
  }

  /** An event and its restore. */
  List<ExpectedSignal> eventAndRestore(
      int code, List<Integer> otherCodes, int partition, OptionalInt zoneOrUser, String when) {
    return List.of(
        signal(Qualifier.NEW_EVENT, code, otherCodes, partition, zoneOrUser, when),
        signal(
            Qualifier.RESTORE, code, otherCodes, partition, zoneOrUser, "after putting it back"));
  }
}
