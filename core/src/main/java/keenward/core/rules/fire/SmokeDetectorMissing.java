package keenward.core.rules.fire;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Floor;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Room;
import keenward.core.plan.RoomUse;
import keenward.core.plan.SitePlan;
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

/** A place where NFPA 72 wants a smoke detector has none. */
public final class SmokeDetectorMissing implements Rule {

  private static final Set<DeviceKind> SMOKE = Set.of(DeviceKind.SMOKE);

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.FIRE_AND_CARBON_MONOXIDE, 2, "smoke-detector-missing", Severity.ERROR)
          .source(
              Source.read(
                  "NFPA 72",
                  "2010",
                  "chapter 29, household",
                  "trade article on chapter 29 of the 2010 edition"))
          .purpose(
              "Under `nfpa72-household`, looks for bedrooms without a smoke detector, bedroom doors with none on the"
                  + " other side, and levels with none.")
          .consequence("Smoke reaches the people who sleep before the alarm does.")
          .limits(
              "Goes by rooms; FIR-05 measures from the bedroom door. It does not measure the size of a level."
                  + " Lofts are not counted as levels. Local code and the authority having jurisdiction decide.")
          .remedy("Plan a smoke detector there.")
          .broken(
              """
              keenward: 1
              site: Example
              regime: nfpa72-household
              floors:
                Upper:
                  rooms:
                    Landing: { use: landing, outline: [[0, 0], [3, 0], [3, 2], [0, 2]] }
                    Bedroom: { use: bedroom, outline: [[3, 0], [7, 0], [7, 2], [3, 2]] }
                  openings:
                    Bedroom door: { kind: door, between: [Landing, Bedroom], at: 0.5 m, width: 0.8 m }
              devices:
                Bedroom smoke: { kind: smoke, wiring: wired, latching: no, room: Bedroom }
              zones:
                1: { name: Bedroom smoke, response: fire, device: Bedroom smoke }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              regime: nfpa72-household
              floors:
                Upper:
                  rooms:
                    Landing: { use: landing, outline: [[0, 0], [3, 0], [3, 2], [0, 2]] }
                    Bedroom: { use: bedroom, outline: [[3, 0], [7, 0], [7, 2], [3, 2]] }
                  openings:
                    Bedroom door: { kind: door, between: [Landing, Bedroom], at: 0.5 m, width: 0.8 m }
              devices:
                Bedroom smoke: { kind: smoke, wiring: wired, latching: no, room: Bedroom }
                Landing smoke: { kind: smoke, wiring: wired, latching: no, room: Landing }
              zones:
                1: { name: Bedroom smoke, response: fire, device: Bedroom smoke }
                2: { name: Landing smoke, response: fire, device: Landing smoke }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              regime: nfpa72-household
              floors:
                Upper:
                  rooms:
                    Landing: { use: landing, outline: [[0, 0], [3, 0], [3, 2], [0, 2]] }
                    Bedroom: { use: office, outline: [[3, 0], [7, 0], [7, 2], [3, 2]] }
                  openings:
                    Bedroom door: { kind: door, between: [Landing, Bedroom], at: 0.5 m, width: 0.8 m }
              devices:
                Bedroom smoke: { kind: smoke, wiring: wired, latching: no, room: Bedroom }
              zones:
                1: { name: Bedroom smoke, response: fire, device: Bedroom smoke }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    SitePlan plan = input.plan();
    if (!SleepingRooms.isJudged(plan)) {
      if (SleepingRooms.hasAny(plan)) {
        report.notAssessed(
            PlanPath.of("regime"),
            "whether smoke detectors are where people sleep, since no regime for fire is named",
            "regime: [nfpa72-household]");
      }
      return;
    }
    if (plan.floors().isEmpty()) {
      report.notAssessed(
          PlanPath.of("floors"),
          "whether smoke detectors are where people sleep, since the plan has no rooms",
          "floors: { Ground: { rooms: { Bedroom: { use: bedroom } } } }");
      return;
    }
    if (SleepingRooms.isPlaceOpen(plan, ZoneResponse.FIRE, SMOKE)) {
      report.notAssessed(
          PlanPath.of("devices"),
          "whether smoke detectors are where people sleep, since the plan does not give the room of each",
          "room: Bedroom");
      return;
    }
    Set<String> watched = SleepingRooms.watched(plan, ZoneResponse.FIRE, SMOKE);
    plan.floors().forEach(floor -> judge(floor, watched, report));
  }

  private static void judge(Floor floor, Set<String> watched, Report report) {
    PlanPath place = PlanPath.of("floors", floor.name(), "rooms");
    for (Room bedroom : SleepingRooms.bedrooms(floor)) {
      report.judged();
      if (!watched.contains(bedroom.name())) {
        found(
            place.then(bedroom.name()),
            List.of(bedroom.name()),
            "Bedroom '" + bedroom.name() + "' has no smoke detector.",
            report);
      }
      List<String> outside = SleepingRooms.roomsOutside(floor, bedroom);
      if (!outside.isEmpty() && outside.stream().noneMatch(watched::contains)) {
        found(
            place.then(bedroom.name()),
            outside,
            "No smoke detector is outside the door of bedroom '"
                + bedroom.name()
                + "', in "
                + Words.names(outside)
                + ".",
            report);
      }
    }
    List<String> rooms = new ArrayList<>(floor.rooms().stream().map(Room::name).toList());
    boolean isLevel = floor.rooms().stream().anyMatch(room -> room.use().orNull() != RoomUse.LOFT);
    if (isLevel) {
      report.judged();
      if (rooms.stream().noneMatch(watched::contains) && SleepingRooms.bedrooms(floor).isEmpty()) {
        found(
            PlanPath.of("floors", floor.name()),
            rooms,
            "Level '" + floor.name() + "' has no smoke detector.",
            report);
      }
    }
  }

  private static void found(PlanPath place, List<String> rooms, String what, Report report) {
    report.found(
        place,
        what,
        "Plan a smoke detector in "
            + Words.names(rooms).replace(" and ", " or ")
            + ", on a fire zone.",
        Involved.rooms(rooms));
  }
}
