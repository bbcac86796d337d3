package keenward.core.rules.entry;

import java.util.List;
import keenward.core.building.walking.EntryWay;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Ties;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneResponse;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** Behind an entry door there is no way to a place to disarm. */
public final class NoKeypadBehindEntryDoor implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.ENTRY_ROUTE, 2, "no-keypad-behind-entry-door", Severity.ERROR)
          .source(Source.practice())
          .purpose(
              "Looks for entry doors from which no keypad of their partition can be reached through doors and"
                  + " stairs.")
          .consequence("The delay runs, and whoever came in has nowhere to stop it.")
          .limits(
              "A partition with a fob or a key switch is let pass, since people disarm before they come in or"
                  + " anywhere. Does not measure the walk.")
          .remedy(
              "Plan a keypad there, let an existing one serve the partition, or take the delay off the door.")
          .broken(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Hall:   { use: hall,   outline: [[0, 0], [3, 0], [3, 4], [0, 4]] }
                    Garage: { use: garage, outline: [[3, 0], [8, 0], [8, 4], [3, 4]] }
                  openings:
                    Front door:  { kind: door, between: [Hall, outside], edge: 1, at: 1 m, width: 0.9 m }
                    Garage door: { kind: roller-shutter, between: [Garage, outside], edge: 1, at: 1 m, width: 2.5 m }
              devices:
                Front contact:  { kind: contact, wiring: wired, room: Hall, opening: Front door }
                Garage contact: { kind: contact, wiring: wired, room: Garage, opening: Garage door }
                Hall keypad:    { kind: keypad, wiring: bus, room: Hall }
              zones:
                1: { name: Front door,  response: entry-exit, device: Front contact }
                2: { name: Garage door, response: entry-exit, device: Garage contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Hall:   { use: hall,   outline: [[0, 0], [3, 0], [3, 4], [0, 4]] }
                    Garage: { use: garage, outline: [[3, 0], [8, 0], [8, 4], [3, 4]] }
                  openings:
                    Front door:  { kind: door, between: [Hall, outside], edge: 1, at: 1 m, width: 0.9 m }
                    Garage door: { kind: roller-shutter, between: [Garage, outside], edge: 1, at: 1 m, width: 2.5 m }
              devices:
                Front contact:  { kind: contact, wiring: wired, room: Hall, opening: Front door }
                Garage contact: { kind: contact, wiring: wired, room: Garage, opening: Garage door }
                Hall keypad:    { kind: keypad, wiring: bus, room: Hall }
              zones:
                1: { name: Front door,  response: entry-exit, device: Front contact }
                2: { name: Garage door, response: perimeter,  device: Garage contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Hall:   { use: hall,   outline: [[0, 0], [3, 0], [3, 4], [0, 4]] }
                    Garage: { use: garage, outline: [[3, 0], [8, 0], [8, 4], [3, 4]] }
                  openings:
                    Front door:  { kind: door, between: [Hall, outside], edge: 1, at: 1 m, width: 0.9 m }
                    Inner door:  { kind: door, between: [Hall, Garage], at: 1 m, width: 0.9 m }
                    Garage door: { kind: roller-shutter, between: [Garage, outside], edge: 1, at: 1 m, width: 2.5 m }
              devices:
                Front contact:  { kind: contact, wiring: wired, room: Hall, opening: Front door }
                Garage contact: { kind: contact, wiring: wired, room: Garage, opening: Garage door }
                Hall keypad:    { kind: keypad, wiring: bus, room: Hall }
              zones:
                1: { name: Front door,  response: entry-exit, device: Front contact }
                2: { name: Garage door, response: entry-exit, device: Garage contact }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    SitePlan plan = input.plan();
    boolean hasFob = plan.devicesOf(DeviceKind.FOB).findAny().isPresent();
    input.entryWays().notKnown().forEach(report::notAssessed);
    for (EntryWay way : input.entryWays().ways()) {
      report.judged();
      Zone zone = way.zone();
      if (way.walks().isEmpty() && !hasFob && !hasKeySwitch(plan, zone)) {
        report.found(
            zone.path(),
            "From '"
                + way.start()
                + "', the entry of "
                + Words.zone(zone)
                + ", no keypad of "
                + Words.names(zone.partitions())
                + " can be reached.",
            "Plan a keypad behind '"
                + way.start()
                + "', or give zone "
                + zone.number()
                + " the response perimeter.",
            Involved.zone(zone.number())
                .and(
                    Involved.openings(
                        way.door().map(door -> List.of(door.name())).orElse(List.of()))));
      }
    }
  }

  private static boolean hasKeySwitch(SitePlan plan, Zone entry) {
    return plan.zones().stream()
        .anyMatch(zone ->
            zone.response() == ZoneResponse.KEY_SWITCH
                && Ties.meet(zone.partitions(), entry.partitions()));
  }
}
