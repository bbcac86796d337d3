package keenward.core.rules.partitions;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import keenward.core.building.walking.EntryWay;
import keenward.core.building.walking.Sightings;
import keenward.core.building.walking.Walk;
import keenward.core.plan.MissingFact;
import keenward.core.plan.Partition;
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

/** The way in to one partition leads through another, to which it is not tied. */
public final class CommonAreaNotTied implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.PARTITIONS, 1, "common-area-not-tied", Severity.ERROR)
          .source(Source.practice())
          .purpose(
              "Follows people of one partition from their entry door to their keypad, and looks for zones on the way"
                  + " that belong to another partition only.")
          .consequence(
              "Whoever lives upstairs comes home while the shop is armed, crosses its hall and sets off its alarm,"
                  + " which they may not even be allowed to stop.")
          .limits(
              "Goes by rooms and doors, by the fewest of them, as the rules on the entry route do. Zones that give a"
                  + " reason are let pass.")
          .remedy("Make the shared rooms a partition of their own that is `common to:` both.")
          .broken(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Hall: { use: hall,   outline: [[0, 0], [3, 0], [3, 4], [0, 4]] }
                    Flat: { use: living, outline: [[3, 0], [8, 0], [8, 4], [3, 4]] }
                  openings:
                    House door: { kind: door, between: [Hall, outside], edge: 1, at: 1 m, width: 0.9 m }
                    Flat door:  { kind: door, between: [Hall, Flat], at: 1 m, width: 0.9 m }
              devices:
                House contact: { kind: contact, wiring: wired, room: Hall, opening: House door }
                Hall motion:   { kind: motion, wiring: wired, room: Hall }
                Flat keypad:   { kind: keypad, wiring: bus, room: Flat }
                Hall keypad:   { kind: keypad, wiring: bus, room: Hall }
              partitions:
                Shop: { number: 1, keypads: [Hall keypad] }
                Flat: { number: 2, keypads: [Flat keypad] }
              zones:
                1: { name: House door,  response: entry-exit, partition: Flat, device: House contact }
                2: { name: Hall motion, response: instant,    partition: Shop, device: Hall motion }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Hall: { use: hall,   outline: [[0, 0], [3, 0], [3, 4], [0, 4]] }
                    Flat: { use: living, outline: [[3, 0], [8, 0], [8, 4], [3, 4]] }
                  openings:
                    House door: { kind: door, between: [Hall, outside], edge: 1, at: 1 m, width: 0.9 m }
                    Flat door:  { kind: door, between: [Hall, Flat], at: 1 m, width: 0.9 m }
              devices:
                House contact: { kind: contact, wiring: wired, room: Hall, opening: House door }
                Hall motion:   { kind: motion, wiring: wired, room: Hall }
                Flat keypad:   { kind: keypad, wiring: bus, room: Flat }
                Hall keypad:   { kind: keypad, wiring: bus, room: Hall }
              partitions:
                Shop: { number: 1, keypads: [Hall keypad] }
                Flat: { number: 2, keypads: [Flat keypad] }
                Hall: { number: 3, keypads: [Hall keypad, Flat keypad], common to: [Shop, Flat] }
              zones:
                1: { name: House door,  response: entry-exit, partition: Hall, device: House contact }
                2: { name: Hall motion, response: follower,   partition: Hall, device: Hall motion }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Hall: { use: hall,   outline: [[0, 0], [3, 0], [3, 4], [0, 4]] }
                    Flat: { use: living, outline: [[3, 0], [8, 0], [8, 4], [3, 4]] }
                  openings:
                    House door: { kind: door, between: [Hall, outside], edge: 1, at: 1 m, width: 0.9 m }
                    Flat door:  { kind: door, between: [Hall, Flat], at: 1 m, width: 0.9 m }
              devices:
                House contact: { kind: contact, wiring: wired, room: Hall, opening: House door }
                Hall motion:   { kind: motion, wiring: wired, room: Hall }
                Flat keypad:   { kind: keypad, wiring: bus, room: Flat }
                Hall keypad:   { kind: keypad, wiring: bus, room: Hall }
              partitions:
                Shop: { number: 1, keypads: [Hall keypad] }
                Flat: { number: 2, keypads: [Flat keypad] }
              zones:
                1: { name: House door,  response: entry-exit, partition: Flat, device: House contact }
                2: { name: Hall motion, response: instant,    partition: Flat, device: Hall motion }
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
    for (MissingFact fact : input.entryWays().notKnown()) {
      report.notAssessed(
          fact.place(),
          "whether a way in crosses another partition: " + fact.why(),
          fact.lineToAdd());
    }
    Set<String> reported = new LinkedHashSet<>();
    for (EntryWay way : input.entryWays().ways()) {
      if (!way.walks().isEmpty()) {
        report.judged();
        judge(input, way, reported, report);
      }
    }
  }

  private static void judge(CheckInput input, EntryWay way, Set<String> reported, Report report) {
    Set<String> tied = Ties.of(input.plan(), way.zone().partitions());
    for (Walk walk : way.walks()) {
      List<Sightings.Sighting> foreign = new ArrayList<>(input.sightings().onWalk(walk));
      foreign.removeIf(sighting ->
          Ties.meet(tied, sighting.zone().partitions()) || sighting.zone().reason().isGiven());
      if (foreign.isEmpty() && !way.byHabit()) {
        return;
      }
      for (Sightings.Sighting sighting : foreign) {
        if (reported.add(way.zone().number() + " " + sighting.zone().number())) {
          report(input.plan(), way, walk, sighting, report);
        }
      }
    }
  }

  private static void report(
      SitePlan plan, EntryWay way, Walk walk, Sightings.Sighting sighting, Report report) {
    Zone zone = sighting.zone();
    List<String> both = new ArrayList<>(way.zone().partitions());
    both.addAll(zone.partitions());
    List<String> known =
        plan.partitions().stream().map(Partition::name).filter(both::contains).toList();
    report.found(
        zone.path().then("partition"),
        "The way in to "
            + Words.names(way.zone().partitions())
            + ", from '"
            + way.start()
            + "' to '"
            + walk.keypad().name()
            + "', "
            + sighting.how()
            + ", and "
            + Words.zone(zone)
            + " belongs to "
            + Words.names(zone.partitions())
            + " only.",
        "Move zone "
            + zone.number()
            + " and the entry to a partition that is `common to:` "
            + Words.names(known)
            + ".",
        Involved.zones(List.of(zone.number(), way.zone().number()))
            .and(Involved.rooms(walk.route().rooms())));
  }
}
