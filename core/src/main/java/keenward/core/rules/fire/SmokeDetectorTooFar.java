package keenward.core.rules.fire;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import keenward.core.building.walking.Place;
import keenward.core.building.walking.WalkingMap;
import keenward.core.building.walking.WalkingRoute;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Floor;
import keenward.core.plan.Opening;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Room;
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

/** The smoke detector outside a bedroom is too far from its door. */
public final class SmokeDetectorTooFar implements Rule {

  private static final Set<DeviceKind> SMOKE = Set.of(DeviceKind.SMOKE);
  private static final double MOST_METRES = 6.4;

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.FIRE_AND_CARBON_MONOXIDE, 5, "smoke-detector-too-far", Severity.ERROR)
          .source(
              Source.read(
                  "NFPA 72",
                  "2010",
                  "chapter 29, household",
                  "trade article on chapter 29 of the 2010 edition"))
          .purpose(
              "Under `nfpa72-household`, measures along the way people walk how far it is from a door of each bedroom to the"
                  + " nearest smoke detector outside the bedrooms.")
          .consequence("Smoke on the way out reaches the sleepers before the alarm does.")
          .limits(
              "Needs the places of detectors and doors. Other regimes are not assessed. A bedroom with no detector"
                  + " outside at all is FIR-02's matter. Local code and the authority having jurisdiction decide.")
          .parameter("farthest", "6.4 (21 ft)", "m")
          .remedy("Move the detector nearer to the bedroom door, or plan another.")
          .broken(
              """
              keenward: 1
              site: Example
              regime: nfpa72-household
              floors:
                Upper:
                  rooms:
                    Corridor: { use: landing, outline: [[0, 0], [12, 0], [12, 2], [0, 2]] }
                    Bedroom:  { use: bedroom, outline: [[8, 2], [12, 2], [12, 6], [8, 6]] }
                  openings:
                    Bedroom door: { kind: door, between: [Corridor, Bedroom], at: 2 m, width: 0.8 m }
              devices:
                Bedroom smoke:  { kind: smoke, wiring: wired, latching: no, room: Bedroom, at: [10, 4] }
                Corridor smoke: { kind: smoke, wiring: wired, latching: no, room: Corridor, at: [1, 1] }
              zones:
                1: { name: Bedroom smoke,  response: fire, device: Bedroom smoke }
                2: { name: Corridor smoke, response: fire, device: Corridor smoke }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              regime: nfpa72-household
              floors:
                Upper:
                  rooms:
                    Corridor: { use: landing, outline: [[0, 0], [12, 0], [12, 2], [0, 2]] }
                    Bedroom:  { use: bedroom, outline: [[8, 2], [12, 2], [12, 6], [8, 6]] }
                  openings:
                    Bedroom door: { kind: door, between: [Corridor, Bedroom], at: 2 m, width: 0.8 m }
              devices:
                Bedroom smoke:  { kind: smoke, wiring: wired, latching: no, room: Bedroom, at: [10, 4] }
                Corridor smoke: { kind: smoke, wiring: wired, latching: no, room: Corridor, at: [8, 1] }
              zones:
                1: { name: Bedroom smoke,  response: fire, device: Bedroom smoke }
                2: { name: Corridor smoke, response: fire, device: Corridor smoke }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              regime: nfpa72-household
              floors:
                Upper:
                  rooms:
                    Corridor: { use: landing, outline: [[0, 0], [12, 0], [12, 2], [0, 2]] }
                    Bedroom:  { use: bedroom, outline: [[8, 2], [12, 2], [12, 6], [8, 6]] }
                  openings:
                    Bedroom door: { kind: door, between: [Corridor, Bedroom], at: 2 m, width: 0.8 m }
              devices:
                Bedroom smoke:  { kind: smoke, wiring: wired, latching: no, room: Bedroom, at: [10, 4] }
                Corridor smoke: { kind: smoke, wiring: wired, latching: no, room: Corridor, at: [4.5, 1] }
              zones:
                1: { name: Bedroom smoke,  response: fire, device: Bedroom smoke }
                2: { name: Corridor smoke, response: fire, device: Corridor smoke }
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
      return;
    }
    Set<String> bedrooms = new HashSet<>();
    plan.floors()
        .forEach(floor -> SleepingRooms.bedrooms(floor).forEach(room -> bedrooms.add(room.name())));
    List<Device> detectors =
        SleepingRooms.detectors(plan, ZoneResponse.FIRE, SMOKE).stream()
            .filter(each -> each.room().find().filter(bedrooms::contains).isEmpty())
            .toList();
    if (detectors.isEmpty()) {
      return;
    }
    for (Floor floor : plan.floors()) {
      for (Room bedroom : SleepingRooms.bedrooms(floor)) {
        List<Opening> doors =
            floor.openings().stream()
                .filter(door -> door.isInnerWay() && door.touches(bedroom.name()))
                .toList();
        if (!doors.isEmpty()) {
          judge(input.walkingMap(), floor, bedroom, doors, detectors, report);
        }
      }
    }
  }

  private static void judge(
      WalkingMap map,
      Floor floor,
      Room bedroom,
      List<Opening> doors,
      List<Device> detectors,
      Report report) {
    List<Place> from = doors.stream().flatMap(door -> map.place(door).stream()).toList();
    List<WalkingRoute> ways = new ArrayList<>();
    List<String> placeless = new ArrayList<>();
    for (Device detector : detectors) {
      Optional<Place> to = map.place(detector);
      if (to.isEmpty()) {
        placeless.add(detector.name());
      } else {
        from.forEach(start -> map.search(start, to.get()).find().ifPresent(ways::add));
      }
    }
    PlanPath place = PlanPath.of("floors", floor.name(), "rooms", bedroom.name());
    Optional<WalkingRoute> nearest =
        ways.stream().min(Comparator.comparingDouble(WalkingRoute::metres));
    boolean isNear = nearest.filter(way -> way.metres() <= MOST_METRES).isPresent();
    if (!isNear && (from.size() < doors.size() || !placeless.isEmpty())) {
      report.notAssessed(
          place,
          "how far it is from the door of '"
              + bedroom.name()
              + "' to a smoke detector, since the plan does not say where "
              + Words.names(
                  placeless.isEmpty() ? doors.stream().map(Opening::name).toList() : placeless)
              + (placeless.size() == 1 ? " is" : " are"),
          placeless.isEmpty() ? "edge: 1, at: 1 m, width: 0.9 m" : "at: [1.9, 2]");
      return;
    }
    report.judged();
    if (!isNear) {
      report.found(
          place,
          nearest
              .map(way ->
                  "From '"
                      + way.from().name()
                      + "', the door of bedroom '"
                      + bedroom.name()
                      + "', it is "
                      + way.metresInWords()
                      + " to the nearest smoke detector outside, '"
                      + way.to().name()
                      + "'; at most 6.4 m (21 ft) is asked for.")
              .orElse(
                  "No way leads from the door of bedroom '"
                      + bedroom.name()
                      + "' to a smoke detector outside, as drawn."),
          "Plan a smoke detector within 6.4 m (21 ft) of the door.",
          Involved.rooms(List.of(bedroom.name()))
              .and(
                  Involved.devices(
                      nearest.map(way -> List.of(way.to().name())).orElse(List.of()))));
    }
  }
}
