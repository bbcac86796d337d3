package keenward.core.rules.entry;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import keenward.core.building.walking.EntryWay;
import keenward.core.building.walking.Sightings;
import keenward.core.building.walking.Walk;
import keenward.core.plan.MissingFact;
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

/** A zone on the way from an entry door to the keypad alarms at once. */
public final class InstantZoneOnEntryWalk implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.ENTRY_ROUTE, 1, "instant-zone-on-entry-walk", Severity.ERROR)
          .source(Source.practice())
          .purpose(
              "Follows people from each entry door to the keypad where they disarm, and looks for zones that alarm at"
                  + " once in a room or door on the way: instant and perimeter zones, and followers bound to another"
                  + " door.")
          .consequence("Everybody who comes in the proper way sets off the alarm on the first day.")
          .limits(
              "The walk is the shortest one as drawn, and a detector counts where the walk leads through what it"
                  + " sees. Where the drawing does not say, rooms and doors count, by the fewest of them. Walks come from habits of disarming; without one the nearest keypad is taken, and of several"
                  + " equally near ones any clear walk will do. A zone that gives a reason is let pass.")
          .remedy("Give the zone the response follower, or move the keypad or the detector.")
          .broken(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Passage: { use: hall,  outline: [[0, 0], [2, 0], [2, 6], [0, 6]] }
                    Store:   { use: store, outline: [[2, 0], [8, 0], [8, 6], [2, 6]] }
                  openings:
                    Yard door:  { kind: door, between: [Passage, outside], edge: 1, at: 0.5 m, width: 0.9 m }
                    Store door: { kind: door, between: [Passage, Store], at: 2 m, width: 0.9 m }
              devices:
                Yard contact:   { kind: contact, wiring: wired, room: Passage, opening: Yard door }
                Passage motion: { kind: motion, wiring: wired, room: Passage }
                Store motion:   { kind: motion, wiring: wired, room: Store }
                Yard keypad:    { kind: keypad, wiring: bus, room: Passage }
              zones:
                1: { name: Yard door, response: entry-exit, device: Yard contact }
                2: { name: Passage,   response: instant,    device: Passage motion }
                3: { name: Store,     response: instant,    device: Store motion }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Passage: { use: hall,  outline: [[0, 0], [2, 0], [2, 6], [0, 6]] }
                    Store:   { use: store, outline: [[2, 0], [8, 0], [8, 6], [2, 6]] }
                  openings:
                    Yard door:  { kind: door, between: [Passage, outside], edge: 1, at: 0.5 m, width: 0.9 m }
                    Store door: { kind: door, between: [Passage, Store], at: 2 m, width: 0.9 m }
              devices:
                Yard contact:   { kind: contact, wiring: wired, room: Passage, opening: Yard door }
                Passage motion: { kind: motion, wiring: wired, room: Passage }
                Store motion:   { kind: motion, wiring: wired, room: Store }
                Yard keypad:    { kind: keypad, wiring: bus, room: Passage }
              zones:
                1: { name: Yard door, response: entry-exit, device: Yard contact }
                2: { name: Passage,   response: follower,   device: Passage motion }
                3: { name: Store,     response: instant,    device: Store motion }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Passage: { use: hall,  outline: [[0, 0], [2, 0], [2, 6], [0, 6]] }
                    Store:   { use: store, outline: [[2, 0], [8, 0], [8, 6], [2, 6]] }
                  openings:
                    Yard door:  { kind: door, between: [Passage, outside], edge: 1, at: 0.5 m, width: 0.9 m }
                    Store door: { kind: door, between: [Passage, Store], at: 2 m, width: 0.9 m }
              devices:
                Yard contact:   { kind: contact, wiring: wired, room: Passage, opening: Yard door }
                Passage motion: { kind: motion, wiring: wired, room: Store }
                Store motion:   { kind: motion, wiring: wired, room: Store }
                Yard keypad:    { kind: keypad, wiring: bus, room: Passage }
              zones:
                1: { name: Yard door, response: entry-exit, device: Yard contact }
                2: { name: Passage,   response: instant,    device: Passage motion }
                3: { name: Store,     response: instant,    device: Store motion }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    for (MissingFact fact : input.entryWays().notKnown()) {
      report.notAssessed(
          fact.place(),
          "whether a zone alarms at once on the way in: " + fact.why(),
          fact.lineToAdd());
    }
    Set<Integer> reported = new LinkedHashSet<>();
    for (EntryWay way : input.entryWays().ways()) {
      if (!way.walks().isEmpty()) {
        report.judged();
        judge(input, way, reported, report);
      }
    }
    placeless(input, report);
  }

  private record Blocked(Walk walk, Sightings.Sighting sighting) {}

  private static void judge(CheckInput input, EntryWay way, Set<Integer> reported, Report report) {
    List<Blocked> blocked = new ArrayList<>();
    for (Walk walk : way.walks()) {
      List<Blocked> here =
          input.sightings().onWalk(walk).stream()
              .filter(sighting -> way.isAlarmedBy(input.plan(), sighting.zone()))
              .map(sighting -> new Blocked(walk, sighting))
              .toList();
      if (here.isEmpty() && !way.byHabit()) {
        return;
      }
      blocked.addAll(here);
    }
    for (Blocked each : blocked) {
      if (reported.add(each.sighting().zone().number())) {
        report(way, each, report);
      }
    }
  }

  private static void report(EntryWay way, Blocked blocked, Report report) {
    Zone zone = blocked.sighting().zone();
    boolean isBound = zone.response() == ZoneResponse.FOLLOWER;
    String walk = "the way from '" + way.start() + "' to '" + blocked.walk().keypad().name() + "'";
    report.found(
        zone.path().then(isBound ? "follows" : "response"),
        Words.atStart(zone)
            + (isBound
                ? " follows zone "
                    + Words.list(zone.follows().stream().map(String::valueOf).toList())
                    + " only and alarms at once otherwise, and "
                : " alarms at once, and ")
            + walk
            + " "
            + blocked.sighting().how()
            + ".",
        isBound
            ? "Add zone " + way.zone().number() + " to `follows:` of zone " + zone.number() + "."
            : "Give zone " + zone.number() + " the response follower, or move it or the keypad.",
        Involved.zones(List.of(zone.number(), way.zone().number()))
            .and(Involved.openings(way.door().map(door -> List.of(door.name())).orElse(List.of())))
            .and(Involved.devices(List.of(blocked.walk().keypad().name())))
            .and(Involved.rooms(blocked.walk().route().rooms())));
  }

  private static void placeless(CheckInput input, Report report) {
    if (input.entryWays().ways().isEmpty()) {
      return;
    }
    List<Zone> open =
        input.sightings().placeless().stream()
            .filter(zone ->
                zone.response() == ZoneResponse.INSTANT
                    || zone.response() == ZoneResponse.PERIMETER)
            .toList();
    Optional<Zone> first = open.stream().findFirst();
    first.ifPresent(zone ->
        report.notAssessed(
            zone.path(),
            "whether "
                + (open.size() == 1 ? "zone " : "zones ")
                + Words.someZones(open)
                + (open.size() == 1 ? " is" : " are")
                + " on a way in, since the plan does not say where",
            "room: Hall"));
  }
}
