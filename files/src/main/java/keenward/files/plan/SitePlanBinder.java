package keenward.files.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceType;
import keenward.core.plan.DrawingUnit;
import keenward.core.plan.Floor;
import keenward.core.plan.PanelSettings;
import keenward.core.plan.Partition;
import keenward.core.plan.Room;
import keenward.core.plan.SitePlan;
import keenward.files.shape.Field;
import keenward.files.shape.Fields;

/** Makes the plan from a file in which nothing is wrong. */
final class SitePlanBinder {

  private SitePlanBinder() {}

  static SitePlan bind(Fields root) {
    List<Floor> floors = list(root, SitePlanShape.FLOORS, FloorSection::bind);
    List<DeviceType> types =
        list(
            root, SitePlanShape.TYPES, (name, fields) -> new DeviceType(name, Traits.bind(fields)));
    Map<String, DeviceType> typesByName = byName(types, DeviceType::name);
    Map<String, DrawingUnit> units = unitOfRoom(floors);
    List<Device> devices =
        list(
            root,
            SitePlanShape.DEVICES,
            (name, fields) -> DeviceSection.bind(name, fields, typesByName, units));
    Map<String, Device> devicesByName = byName(devices, Device::name);
    List<Partition> stated = partitions(root);
    List<Partition> partitions = stated.isEmpty() ? List.of(Partition.ONLY) : stated;
    return new SitePlan(
        root.get(SitePlanShape.SITE),
        root.list(SitePlanShape.REGIME),
        root.fact(SitePlanShape.MONITORING),
        list(root, SitePlanShape.PEOPLE, PeopleSection::bind),
        floors,
        types,
        devices,
        list(root, SitePlanShape.SUPPLIES, PowerSection::supply),
        list(root, SitePlanShape.JUNCTIONS, PowerSection::junction),
        list(root, SitePlanShape.CABLES, PowerSection::cable),
        root.find(SitePlanShape.PANEL).orElseGet(PanelSettings::none),
        partitions,
        !stated.isEmpty(),
        list(
            root,
            SitePlanShape.ZONES,
            (number, fields) -> ZoneSection.bind(number, fields, partitions, devicesByName)),
        list(
            root,
            SitePlanShape.USERS,
            (number, fields) -> UserSection.bind(number, fields, partitions)),
        root.fact(SitePlanShape.SERVICE),
        root.list(SitePlanShape.UNPLACED));
  }

  private static List<Partition> partitions(Fields root) {
    List<Partition> partitions = new ArrayList<>();
    root.find(SitePlanShape.PARTITIONS)
        .orElseGet(Map::of)
        .forEach((name, fields) ->
            partitions.add(PartitionSection.bind(name, fields, partitions.size() + 1)));
    return partitions;
  }

  private static Map<String, DrawingUnit> unitOfRoom(List<Floor> floors) {
    Map<String, DrawingUnit> units = new HashMap<>();
    for (Floor floor : floors) {
      for (Room room : floor.rooms()) {
        units.put(room.name(), floor.unit());
      }
    }
    return units;
  }

  private static <K, T> List<T> list(
      Fields root, Field<Map<K, Fields>> section, BiFunction<K, Fields, T> bind) {
    return root.find(section).orElseGet(Map::of).entrySet().stream()
        .map(entry -> bind.apply(entry.getKey(), entry.getValue()))
        .toList();
  }

  private static <T> Map<String, T> byName(List<T> items, Function<T, String> name) {
    Map<String, T> map = new LinkedHashMap<>();
    items.forEach(item -> map.put(name.apply(item), item));
    return map;
  }
}
