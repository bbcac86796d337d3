package keenward.core.proof;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import keenward.core.building.contact.ContactTrip;
import keenward.core.building.contact.FittedContact;
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
  private final Map<String, String> floorOfRoom = new HashMap<>();
  private final Map<String, Partition> partitions = new HashMap<>();
  private final Map<String, Zone> zoneOfDevice = new HashMap<>();
  private final List<String> keypads;
  private final Map<String, FittedContact> contacts = new HashMap<>();

  TestContext(SitePlan plan, Map<Setting, Long> panelDefaults) {
    this.plan = plan;
    this.settings = Settings.of(plan, panelDefaults);
    this.monitoring = plan.monitoring().find();
    this.keypads = plan.devicesOf(DeviceKind.KEYPAD).map(Device::name).toList();
    FittedContact.all(plan).forEach(each -> contacts.put(each.device().name(), each));
    plan.partitions().forEach(each -> partitions.put(each.name(), each));
    for (Floor floor : plan.floors()) {
      floor.rooms().forEach(room -> floorOfRoom.putIfAbsent(room.name(), floor.name()));
    }
    for (Zone zone : plan.zones()) {
      for (ZoneDevice each : zone.devices()) {
        if (each instanceof ZoneDevice.Fitted fitted) {
          zoneOfDevice.merge(
              fitted.device().name(),
              zone,
              (one, other) -> one.number() <= other.number() ? one : other);
        }
      }
    }
  }

  /** When a contact trips, where the plan says how it is fitted. */
  Optional<ContactTrip> trip(Device contact) {
    return Optional.ofNullable(contacts.get(contact.name()))
        .map(FittedContact::trips)
        .flatMap(trips ->
            trips instanceof FittedContact.Trips.At(ContactTrip trip)
                ? Optional.of(trip)
                : Optional.empty());
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
    return room.find().map(name -> new Place(floorOfRoom.getOrDefault(name, ""), name));
  }

  /** The first partition of a zone, under whose number it reports. */
  Partition partition(Zone zone) {
    return partitions.getOrDefault(zone.partitions().getFirst(), plan.partitions().getFirst());
  }

  /** The keypads of a partition in words. */
  String keypads(Partition partition) {
    List<String> names = partition.keypads().isEmpty() ? keypads : partition.keypads();
    return names.isEmpty() ? "the keypad" : String.join(" or ", names);
  }

  /** The zone of lowest number that uses any input of a device. */
  Optional<Zone> zoneOf(Device device) {
    return Optional.ofNullable(zoneOfDevice.get(device.name()));
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
