package keenward.core.rules.partitions;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import keenward.core.building.DevicePlace;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Partition;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Ties;
import keenward.core.plan.Zone;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** All keypads of a partition stand in rooms that another one guards. */
public final class KeypadInsideOtherPartition implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.PARTITIONS, 2, "keypad-inside-other-partition", Severity.ERROR)
          .source(Source.practice())
          .purpose(
              "Looks for partitions each of whose keypads stands in a room that only zones of other partitions, not"
                  + " tied to it, watch.")
          .consequence(
              "To disarm their own part people have to enter another one that may be armed.")
          .limits(
              "Goes by the room of the keypad. A fob or a key switch of the partition is not looked at.")
          .remedy("Plan a keypad in the partition itself, or in a common area.")
          .broken(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Shop: { use: shop, outline: [[0, 0], [5, 0], [5, 4], [0, 4]] }
                    Yard store: { use: store, outline: [[5, 0], [8, 0], [8, 4], [5, 4]] }
              devices:
                Shop motion:  { kind: motion, wiring: wired, room: Shop }
                Store motion: { kind: motion, wiring: wired, room: Yard store }
                Shop keypad:  { kind: keypad, wiring: bus, room: Shop }
              partitions:
                Shop:  { number: 1, keypads: [Shop keypad] }
                Store: { number: 2, keypads: [Shop keypad] }
              zones:
                1: { name: Shop motion,  response: instant, partition: Shop,  device: Shop motion }
                2: { name: Store motion, response: instant, partition: Store, device: Store motion }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Shop: { use: shop, outline: [[0, 0], [5, 0], [5, 4], [0, 4]] }
                    Yard store: { use: store, outline: [[5, 0], [8, 0], [8, 4], [5, 4]] }
              devices:
                Shop motion:  { kind: motion, wiring: wired, room: Shop }
                Store motion: { kind: motion, wiring: wired, room: Yard store }
                Shop keypad:  { kind: keypad, wiring: bus, room: Shop }
                Store keypad: { kind: keypad, wiring: bus, room: Yard store }
              partitions:
                Shop:  { number: 1, keypads: [Shop keypad] }
                Store: { number: 2, keypads: [Shop keypad, Store keypad] }
              zones:
                1: { name: Shop motion,  response: instant, partition: Shop,  device: Shop motion }
                2: { name: Store motion, response: instant, partition: Store, device: Store motion }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Shop: { use: shop, outline: [[0, 0], [5, 0], [5, 4], [0, 4]] }
                    Yard store: { use: store, outline: [[5, 0], [8, 0], [8, 4], [5, 4]] }
              devices:
                Shop motion:  { kind: motion, wiring: wired, room: Shop }
                Store motion: { kind: motion, wiring: wired, room: Yard store }
                Shop keypad:  { kind: keypad, wiring: bus, room: Shop }
              partitions:
                Shop:  { number: 1, keypads: [Shop keypad] }
                Store: { number: 2, keypads: [Shop keypad] }
              zones:
                1: { name: Shop motion,  response: instant, partition: [Shop, Store], device: Shop motion }
                2: { name: Store motion, response: instant, partition: Store, device: Store motion }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    SitePlan plan = input.plan();
    if (plan.partitions().size() < 2) {
      return;
    }
    List<Device> keypads = plan.devicesOf(DeviceKind.KEYPAD).toList();
    if (keypads.isEmpty()) {
      report.notAssessed(
          PlanPath.of("devices"),
          "where partitions are disarmed, since the plan has no keypad",
          "devices: { Hall keypad: { kind: keypad, room: Hall } }");
      return;
    }
    Map<String, String> roomOf = new LinkedHashMap<>();
    for (DevicePlace place : input.building().devices()) {
      place.room().ifPresent(room -> roomOf.put(place.device().name(), room));
    }
    for (Partition partition : plan.partitions()) {
      judge(input, partition, keypads, roomOf, report);
    }
  }

  private static void judge(
      CheckInput input,
      Partition partition,
      List<Device> keypads,
      Map<String, String> roomOf,
      Report report) {
    Set<String> tied = Ties.of(input.plan(), List.of(partition.name()));
    List<Device> serving =
        keypads.stream()
            .filter(keypad ->
                partition.keypads().isEmpty() || partition.keypads().contains(keypad.name()))
            .toList();
    List<Zone> guards = new ArrayList<>();
    List<String> without = new ArrayList<>();
    for (Device keypad : serving) {
      Optional<String> room = Optional.ofNullable(roomOf.get(keypad.name()));
      if (room.isEmpty()) {
        without.add(keypad.name());
        continue;
      }
      List<Zone> watching = input.sightings().inRoom(room.get());
      if (watching.isEmpty()
          || watching.stream().anyMatch(zone -> Ties.meet(tied, zone.partitions()))) {
        report.judged();
        return;
      }
      guards.addAll(watching);
    }
    if (!without.isEmpty()) {
      report.notAssessed(
          PlanPath.of("devices", without.getFirst()),
          "where '"
              + partition.name()
              + "' is disarmed, since the plan does not say in which room "
              + Words.names(without)
              + (without.size() == 1 ? " is" : " are"),
          "room: Hall");
      return;
    }
    report.judged();
    if (serving.isEmpty()) {
      report.found(
          PlanPath.of("partitions", partition.name(), "keypads"),
          "Partition '"
              + partition.name()
              + "' names "
              + Words.names(partition.keypads())
              + ", and none of these is a keypad.",
          "Name a device of kind keypad.",
          Involved.devices(partition.keypads()));
      return;
    }
    List<String> names = serving.stream().map(Device::name).toList();
    report.found(
        PlanPath.of("partitions", partition.name(), "keypads"),
        "Partition '"
            + partition.name()
            + "' is disarmed at "
            + Words.names(names)
            + " only, in a room that "
            + Words.zone(guards.getFirst())
            + " of "
            + Words.names(guards.getFirst().partitions())
            + " watches.",
        "Plan a keypad in '" + partition.name() + "', or tie the two by a common area.",
        Involved.devices(names)
            .and(Involved.zones(guards.stream().map(Zone::number).distinct().toList())));
  }
}
