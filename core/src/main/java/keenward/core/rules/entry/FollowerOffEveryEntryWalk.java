package keenward.core.rules.entry;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import keenward.core.building.walking.EntryWay;
import keenward.core.building.walking.Sightings;
import keenward.core.building.walking.Walk;
import keenward.core.building.walking.WalkingMap;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
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

/** A follower waits for the entry delay, and nobody who comes in properly passes it. */
public final class FollowerOffEveryEntryWalk implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.ENTRY_ROUTE, 4, "follower-off-every-entry-walk", Severity.ADVICE)
          .source(Source.practice())
          .purpose(
              "Looks for followers that see nobody on any drawn walk from an entry door to the keypad where people"
                  + " disarm.")
          .consequence(
              "A burglar who comes in by an entry door has the whole delay in that room too, where an instant zone would"
                  + " have told of them at once.")
          .limits(
              "Only where every walk is drawn and it is known what the follower's detectors see. People stray from the"
                  + " shortest walk, to a light switch or away from a dog: a follower may be right all the same. A zone that"
                  + " gives a reason is let pass.")
          .remedy("Give the zone the response instant, or say with `reason:` why it follows.")
          .broken(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Passage: { use: hall,   outline: [[0, 0], [2, 0], [2, 6], [0, 6]] }
                    Office:  { use: office, outline: [[2, 0], [8, 0], [8, 6], [2, 6]] }
                  openings:
                    Yard door:   { kind: door, between: [Passage, outside], edge: 1, at: 0.5 m, width: 0.9 m }
                    Office door: { kind: door, between: [Passage, Office], at: 4 m, width: 0.9 m }
              types:
                corner motion: { kind: motion, wiring: wired, coverage: { pattern: fan, range: 12 m, angle: 90 deg } }
              devices:
                Yard contact:   { kind: contact, wiring: wired, room: Passage, opening: Yard door }
                Passage motion: { type: corner motion, room: Passage, at: [0.1, 5.9], bearing: 170 deg }
                Office motion:  { type: corner motion, room: Office, at: [7.9, 5.9], bearing: 225 deg }
                Yard keypad:    { kind: keypad, wiring: bus, room: Passage, at: [1.9, 2] }
              zones:
                1: { name: Yard door, response: entry-exit, device: Yard contact }
                2: { name: Passage,   response: follower,   device: Passage motion }
                3: { name: Office,    response: follower,   device: Office motion }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Passage: { use: hall,   outline: [[0, 0], [2, 0], [2, 6], [0, 6]] }
                    Office:  { use: office, outline: [[2, 0], [8, 0], [8, 6], [2, 6]] }
                  openings:
                    Yard door:   { kind: door, between: [Passage, outside], edge: 1, at: 0.5 m, width: 0.9 m }
                    Office door: { kind: door, between: [Passage, Office], at: 4 m, width: 0.9 m }
              types:
                corner motion: { kind: motion, wiring: wired, coverage: { pattern: fan, range: 12 m, angle: 90 deg } }
              devices:
                Yard contact:   { kind: contact, wiring: wired, room: Passage, opening: Yard door }
                Passage motion: { type: corner motion, room: Passage, at: [0.1, 5.9], bearing: 170 deg }
                Office motion:  { type: corner motion, room: Office, at: [7.9, 5.9], bearing: 225 deg }
                Yard keypad:    { kind: keypad, wiring: bus, room: Passage, at: [1.9, 2] }
              zones:
                1: { name: Yard door, response: entry-exit, device: Yard contact }
                2: { name: Passage,   response: follower,   device: Passage motion }
                3: { name: Office,    response: instant,    device: Office motion }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Passage: { use: hall,   outline: [[0, 0], [2, 0], [2, 6], [0, 6]] }
                    Office:  { use: office, outline: [[2, 0], [8, 0], [8, 6], [2, 6]] }
                  openings:
                    Yard door:   { kind: door, between: [Passage, outside], edge: 1, at: 0.5 m, width: 0.9 m }
                    Office door: { kind: door, between: [Passage, Office], at: 4 m, width: 0.9 m }
              types:
                corner motion: { kind: motion, wiring: wired, coverage: { pattern: fan, range: 12 m, angle: 90 deg } }
              devices:
                Yard contact:   { kind: contact, wiring: wired, room: Passage, opening: Yard door }
                Passage motion: { type: corner motion, room: Passage, at: [0.1, 5.9], bearing: 170 deg }
                Office motion:  { type: corner motion, room: Office, at: [7.9, 5.9], bearing: 225 deg }
                Yard keypad:    { kind: keypad, wiring: bus, room: Office, at: [2.1, 5.5] }
              zones:
                1: { name: Yard door, response: entry-exit, device: Yard contact }
                2: { name: Passage,   response: follower,   device: Passage motion }
                3: { name: Office,    response: follower,   device: Office motion }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    List<EntryWay> ways = input.entryWays().ways();
    boolean allDrawn =
        !ways.isEmpty()
            && input.entryWays().notKnown().isEmpty()
            && ways.stream()
                .allMatch(way ->
                    !way.walks().isEmpty()
                        && way.walks().stream()
                            .allMatch(walk -> walk.drawn() instanceof WalkingMap.Search.Found));
    if (!allDrawn) {
      return;
    }
    Set<Integer> met = new HashSet<>();
    for (EntryWay way : ways) {
      for (Walk walk : way.walks()) {
        input.sightings().onWalk(walk).stream()
            .map(Sightings.Sighting::zone)
            .filter(
                zone -> zone.follows().isEmpty() || zone.follows().contains(way.zone().number()))
            .map(Zone::number)
            .forEach(met::add);
      }
    }
    Set<String> known = input.views().byDevice().keySet();
    for (Zone zone : input.plan().zones()) {
      if (zone.response() == ZoneResponse.FOLLOWER
          && zone.reason().find().isEmpty()
          && isKnown(zone, known)) {
        report.judged();
        if (!met.contains(zone.number())) {
          report(zone, ways, report);
        }
      }
    }
  }

  private static boolean isKnown(Zone zone, Set<String> known) {
    return !zone.devices().isEmpty()
        && zone.devices().stream()
            .allMatch(each ->
                each instanceof ZoneDevice.Fitted fitted && known.contains(fitted.device().name()));
  }

  private static void report(Zone zone, List<EntryWay> ways, Report report) {
    report.found(
        zone.path().then("response"),
        Words.atStart(zone)
            + " waits for the entry delay, and no way in ("
            + Words.list(ways.stream().map(way -> "'" + way.start() + "'").distinct().toList())
            + ") leads through what it sees.",
        "Give zone "
            + zone.number()
            + " the response instant, or say with `reason:` why it follows.",
        Involved.zones(List.of(zone.number())));
  }
}
