package keenward.core.rules.entry;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.plan.Habit;
import keenward.core.plan.HabitAction;
import keenward.core.plan.Opening;
import keenward.core.plan.Person;
import keenward.core.plan.PlanPath;
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

/** Somebody comes in by a door that starts no entry delay. */
public final class HabitThroughUndelayedDoor implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.ENTRY_ROUTE, 3, "habit-through-undelayed-door", Severity.ERROR)
          .source(Source.practice())
          .purpose(
              "Looks for habits of disarming through a door that no entry-exit zone watches, by its contact or by a"
                  + " detector in the room behind it.")
          .consequence(
              "They set off the alarm with the door handle, before they can reach a keypad.")
          .limits(
              "Goes by habits. Somebody who disarms with a fob before they come in is not told apart.")
          .remedy("Give the door's zone the response entry-exit, or agree on another door.")
          .broken(
              """
              keenward: 1
              site: Example
              people:
                Ines:
                  habits:
                    comes in: { does: disarm, at: "07:30", through: Side door, keypad: Hall keypad }
              floors:
                Ground:
                  rooms:
                    Hall: { use: hall, outline: [[0, 0], [3, 0], [3, 4], [0, 4]] }
                  openings:
                    Front door: { kind: door, between: [Hall, outside], edge: 1, at: 1 m, width: 0.9 m }
                    Side door:  { kind: door, between: [Hall, outside], edge: 2, at: 1 m, width: 0.9 m }
              devices:
                Front contact: { kind: contact, wiring: wired, room: Hall, opening: Front door }
                Side contact:  { kind: contact, wiring: wired, room: Hall, opening: Side door }
                Hall keypad:   { kind: keypad, wiring: bus, room: Hall }
              zones:
                1: { name: Front door, response: entry-exit, device: Front contact }
                2: { name: Side door,  response: perimeter,  device: Side contact }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              people:
                Ines:
                  habits:
                    comes in: { does: disarm, at: "07:30", through: Front door, keypad: Hall keypad }
              floors:
                Ground:
                  rooms:
                    Hall: { use: hall, outline: [[0, 0], [3, 0], [3, 4], [0, 4]] }
                  openings:
                    Front door: { kind: door, between: [Hall, outside], edge: 1, at: 1 m, width: 0.9 m }
                    Side door:  { kind: door, between: [Hall, outside], edge: 2, at: 1 m, width: 0.9 m }
              devices:
                Front contact: { kind: contact, wiring: wired, room: Hall, opening: Front door }
                Side contact:  { kind: contact, wiring: wired, room: Hall, opening: Side door }
                Hall keypad:   { kind: keypad, wiring: bus, room: Hall }
              zones:
                1: { name: Front door, response: entry-exit, device: Front contact }
                2: { name: Side door,  response: perimeter,  device: Side contact }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              people:
                Ines:
                  habits:
                    comes in: { does: arm away, at: "07:30", through: Side door, keypad: Hall keypad }
              floors:
                Ground:
                  rooms:
                    Hall: { use: hall, outline: [[0, 0], [3, 0], [3, 4], [0, 4]] }
                  openings:
                    Front door: { kind: door, between: [Hall, outside], edge: 1, at: 1 m, width: 0.9 m }
                    Side door:  { kind: door, between: [Hall, outside], edge: 2, at: 1 m, width: 0.9 m }
              devices:
                Front contact: { kind: contact, wiring: wired, room: Hall, opening: Front door }
                Side contact:  { kind: contact, wiring: wired, room: Hall, opening: Side door }
                Hall keypad:   { kind: keypad, wiring: bus, room: Hall }
              zones:
                1: { name: Front door, response: entry-exit, device: Front contact }
                2: { name: Side door,  response: perimeter,  device: Side contact }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    Map<String, Opening> openings = new LinkedHashMap<>();
    input.plan().openings().forEach(opening -> openings.put(opening.name(), opening));
    for (Person person : input.plan().people()) {
      for (Habit habit : person.habits()) {
        Optional<Opening> door = habit.through().find().map(openings::get);
        if (habit.action() == HabitAction.DISARM && door.isPresent()) {
          judge(input, person, habit, door.get(), report);
        }
      }
    }
  }

  private static void judge(
      CheckInput input, Person person, Habit habit, Opening door, Report report) {
    List<Zone> watching = input.sightings().atOpening(door.name());
    boolean isDelayed =
        watching.stream().anyMatch(zone -> zone.response() == ZoneResponse.ENTRY_EXIT)
            || input.sightings().inRoom(door.place().room()).stream()
                .anyMatch(zone -> zone.response() == ZoneResponse.ENTRY_EXIT);
    PlanPath place = PlanPath.of("people", person.name(), "habits", habit.name(), "through");
    if (!isDelayed && watching.isEmpty() && !input.sightings().placeless().isEmpty()) {
      report.notAssessed(
          place,
          "whether '"
              + door.name()
              + "' starts an entry delay, since the plan does not say which opening zones "
              + Words.someZones(input.sightings().placeless())
              + " watch",
          "opening: " + door.name());
      return;
    }
    report.judged();
    if (!isDelayed) {
      report.found(
          place,
          person.name()
              + " comes in through '"
              + door.name()
              + "' ('"
              + habit.name()
              + "'), which "
              + (watching.isEmpty()
                  ? "no zone watches"
                  : Words.zone(watching.getFirst())
                      + " watches with response "
                      + watching.getFirst().response().word())
              + ", so that no entry delay starts.",
          "Give the zone of '"
              + door.name()
              + "' the response entry-exit, or agree on another door.",
          Involved.openings(List.of(door.name()))
              .and(Involved.zones(watching.stream().map(Zone::number).toList())));
    }
  }
}
