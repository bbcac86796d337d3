package keenward.core.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One site plan: the only source of every paper, order, sum and check. Names are resolved and
 * unique when a plan comes from the reader; order is the order of the file.
 *
 * @param site the site as a whole
 * @param regimes published rules it has to meet; empty when none is stated
 * @param monitoring the account at the monitoring centre; missing when the site is not monitored or
 *     it is not known
 * @param people people and habits
 * @param floors floors, lowest first
 * @param types bought devices
 * @param devices fitted devices
 * @param supplies power supplies
 * @param junctions joint boxes
 * @param cables power cables
 * @param panel control panel and settings
 * @param partitions partitions; never empty
 * @param hasPartitions whether the plan states partitions, or has just {@link Partition#ONLY}
 * @param zones zones
 * @param users users
 * @param service maintenance
 * @param unplaced import rows that did not fit
 */
public record SitePlan(
    Site site,
    List<Regime> regimes,
    Fact<Monitoring> monitoring,
    List<Person> people,
    List<Floor> floors,
    List<DeviceType> types,
    List<Device> devices,
    List<Supply> supplies,
    List<Junction> junctions,
    List<Cable> cables,
    PanelSettings panel,
    List<Partition> partitions,
    boolean hasPartitions,
    List<Zone> zones,
    List<User> users,
    Fact<Service> service,
    List<UnplacedRow> unplaced) {

  public SitePlan {
    regimes = List.copyOf(regimes);
    people = List.copyOf(people);
    floors = List.copyOf(floors);
    types = List.copyOf(types);
    devices = List.copyOf(devices);
    supplies = List.copyOf(supplies);
    junctions = List.copyOf(junctions);
    cables = List.copyOf(cables);
    partitions = List.copyOf(partitions);
    zones = List.copyOf(zones);
    users = List.copyOf(users);
    unplaced = List.copyOf(unplaced);
    if (partitions.isEmpty()) {
      throw new IllegalArgumentException("a plan has at least one partition");
    }
  }

  /** The zone with this number. */
  public Optional<Zone> findZone(int number) {
    return zones.stream().filter(zone -> zone.number() == number).findFirst();
  }

  /** The partition with this name. */
  public Optional<Partition> findPartition(String name) {
    return partitions.stream().filter(partition -> partition.name().equals(name)).findFirst();
  }

  /** The device with this name. */
  public Optional<Device> findDevice(String name) {
    return devices.stream().filter(device -> device.name().equals(name)).findFirst();
  }

  /** The floor that has a room of this name. */
  public Optional<Floor> findFloorOfRoom(String room) {
    return floors.stream()
        .filter(floor -> floor.rooms().stream().anyMatch(each -> each.name().equals(room)))
        .findFirst();
  }

  /** Every opening of every floor. */
  public Stream<Opening> openings() {
    return floors.stream().flatMap(floor -> floor.openings().stream());
  }

  /** Every device of one kind. */
  public Stream<Device> devicesOf(DeviceKind kind) {
    return devices.stream().filter(device -> device.kind() == kind);
  }

  /** The zones that belong to a partition. */
  public Stream<Zone> zonesOf(Partition partition) {
    return zones.stream().filter(zone -> zone.partitions().contains(partition.name()));
  }
}
