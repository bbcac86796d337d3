package keenward.core.rules.contacts;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Floor;
import keenward.core.plan.Opening;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.PlanPath;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;

/** A double door has a contact on one of its leaves only. */
public final class SecondLeafNotWatched implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.CONTACTS, 3, "second-leaf-not-watched", Severity.ADVICE)
          .source(Source.practice())
          .purpose("Looks for double doors to outside with a single contact.")
          .consequence(
              "The second leaf opens once its bolts are drawn or forced, and no zone does.")
          .limits(
              "Where the second leaf is bolted top and bottom, one contact may do: say so with `reason:` of the zone. A"
                  + " motion detector behind the door does not count here.")
          .remedy("Plan a second contact, in series on the same zone or on one of its own.")
          .broken(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store: { use: store, outline: [[0, 0], [5, 0], [5, 4], [0, 4]] }
                  openings:
                    Store door: { kind: double-door, between: [Store, outside], edge: 1, at: 1 m, width: 1.8 m, material: wood }
              types:
                small contact: { kind: contact, wiring: wired, gaps: { working: 18 mm, release: 25 mm } }
              devices:
                Door contact: { type: small contact, room: Store, opening: Store door, magnet: { gap: 5 mm, from hinge: 0.8 m } }
              zones:
                1: { name: Store door, response: perimeter, device: Door contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store: { use: store, outline: [[0, 0], [5, 0], [5, 4], [0, 4]] }
                  openings:
                    Store door: { kind: double-door, between: [Store, outside], edge: 1, at: 1 m, width: 1.8 m, material: wood }
              types:
                small contact: { kind: contact, wiring: wired, gaps: { working: 18 mm, release: 25 mm } }
              devices:
                Door contact: { type: small contact, room: Store, opening: Store door, magnet: { gap: 5 mm, from hinge: 0.8 m } }
                Second leaf contact: { type: small contact, room: Store, opening: Store door, magnet: { gap: 5 mm, from hinge: 0.8 m } }
              zones:
                1: { name: Store door, response: perimeter, devices: [Door contact, Second leaf contact] }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Store: { use: store, outline: [[0, 0], [5, 0], [5, 4], [0, 4]] }
                  openings:
                    Store door: { kind: double-door, between: [Store, outside], edge: 1, at: 1 m, width: 1.8 m, material: wood }
              types:
                small contact: { kind: contact, wiring: wired, gaps: { working: 18 mm, release: 25 mm } }
              devices:
                Door contact: { type: small contact, room: Store, opening: Store door, magnet: { gap: 5 mm, from hinge: 0.8 m } }
              zones:
                1: { name: Store door, response: perimeter, device: Door contact, reason: the second leaf is bolted top and bottom }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    SitePlan plan = input.plan();
    Map<String, Set<String>> contacts = new LinkedHashMap<>();
    Map<String, Zone> zones = new LinkedHashMap<>();
    for (Zone zone : plan.zones()) {
      for (ZoneDevice each : zone.devices()) {
        if (each instanceof ZoneDevice.Fitted fitted && each.kind() == DeviceKind.CONTACT) {
          Device device = fitted.device();
          device
              .opening()
              .find()
              .ifPresent(opening -> {
                contacts.computeIfAbsent(opening, ignored -> new HashSet<>()).add(device.name());
                zones.putIfAbsent(opening, zone);
              });
        }
      }
    }
    for (Floor floor : plan.floors()) {
      for (Opening door : floor.openings()) {
        Zone zone = zones.get(door.name());
        if (door.kind() == OpeningKind.DOUBLE_DOOR && door.isOutside() && zone != null) {
          report.judged();
          boolean isSingle = contacts.getOrDefault(door.name(), Set.of()).size() == 1;
          if (isSingle && !zone.reason().isGiven()) {
            report(floor, door, zone, report);
          }
        }
      }
    }
  }

  private static void report(Floor floor, Opening door, Zone zone, Report report) {
    report.found(
        PlanPath.of("floors", floor.name(), "openings", door.name()),
        "'"
            + door.name()
            + "' has two leaves, and zone "
            + zone.number()
            + " '"
            + zone.name()
            + "' a contact on one.",
        "Plan a second contact on '"
            + door.name()
            + "', or say in `reason:` of the zone what holds the other leaf.",
        Involved.openings(List.of(door.name())).and(Involved.zones(List.of(zone.number()))));
  }
}
