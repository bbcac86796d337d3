package keenward.core.rules.fire;

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

/** People sleep near a source of carbon monoxide, and no detector is near them. */
public final class CarbonMonoxideDetectorMissing implements Rule {

  private static final Set<DeviceKind> DETECTORS = Set.of(DeviceKind.CARBON_MONOXIDE_DETECTOR);

  private static final RuleCard CARD =
      RuleCard.of(
              RuleFamily.FIRE_AND_CARBON_MONOXIDE,
              3,
              "carbon-monoxide-detector-missing",
              Severity.ERROR)
          .source(
              Source.read(
                  "NFPA 720",
                  "2005",
                  "outside each sleeping area; now in NFPA 72, chapter 29",
                  "support article that quotes NFPA 720"))
          .purpose(
              "Under `nfpa72-household`, where the building has bedrooms and a garage or plant room, looks for"
                  + " bedrooms with no carbon monoxide detector inside or outside their door.")
          .consequence("The gas has no smell: people who sleep do not wake.")
          .limits(
              "A garage or plant room stands for a source. The plan does not state stoves, fireplaces and boilers in"
                  + " other rooms: look for them on site. A plant room may hold no burner, so it gives a warning."
                  + " Local code and the authority having jurisdiction decide.")
          .remedy("Plan a carbon monoxide detector outside the bedroom door.")
          .broken(
              """
              keenward: 1
              site: Example
              regime: nfpa72-household
              floors:
                Ground:
                  rooms:
                    Hall:    { use: hall,    outline: [[0, 0], [3, 0], [3, 2], [0, 2]] }
                    Bedroom: { use: bedroom, outline: [[3, 0], [7, 0], [7, 2], [3, 2]] }
                    Garage:  { use: garage,  outline: [[0, 2], [5, 2], [5, 7], [0, 7]] }
                  openings:
                    Bedroom door: { kind: door, between: [Hall, Bedroom], at: 0.5 m, width: 0.8 m }
              devices:
                Bedroom smoke: { kind: smoke, wiring: wired, latching: no, room: Bedroom }
                Hall smoke:    { kind: smoke, wiring: wired, latching: no, room: Hall }
              zones:
                1: { name: Bedroom smoke, response: fire, device: Bedroom smoke }
                2: { name: Hall smoke,    response: fire, device: Hall smoke }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              regime: nfpa72-household
              floors:
                Ground:
                  rooms:
                    Hall:    { use: hall,    outline: [[0, 0], [3, 0], [3, 2], [0, 2]] }
                    Bedroom: { use: bedroom, outline: [[3, 0], [7, 0], [7, 2], [3, 2]] }
                    Garage:  { use: garage,  outline: [[0, 2], [5, 2], [5, 7], [0, 7]] }
                  openings:
                    Bedroom door: { kind: door, between: [Hall, Bedroom], at: 0.5 m, width: 0.8 m }
              devices:
                Bedroom smoke: { kind: smoke, wiring: wired, latching: no, room: Bedroom }
                Hall smoke:    { kind: smoke, wiring: wired, latching: no, room: Hall }
                Hall gas:      { kind: carbon-monoxide-detector, wiring: wired, room: Hall }
              zones:
                1: { name: Bedroom smoke, response: fire, device: Bedroom smoke }
                2: { name: Hall smoke,    response: fire, device: Hall smoke }
                3: { name: Hall gas,      response: carbon-monoxide, device: Hall gas }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              regime: nfpa72-household
              floors:
                Ground:
                  rooms:
                    Hall:    { use: hall,    outline: [[0, 0], [3, 0], [3, 2], [0, 2]] }
                    Bedroom: { use: bedroom, outline: [[3, 0], [7, 0], [7, 2], [3, 2]] }
                    Garage:  { use: store,   outline: [[0, 2], [5, 2], [5, 7], [0, 7]] }
                  openings:
                    Bedroom door: { kind: door, between: [Hall, Bedroom], at: 0.5 m, width: 0.8 m }
              devices:
                Bedroom smoke: { kind: smoke, wiring: wired, latching: no, room: Bedroom }
                Hall smoke:    { kind: smoke, wiring: wired, latching: no, room: Hall }
              zones:
                1: { name: Bedroom smoke, response: fire, device: Bedroom smoke }
                2: { name: Hall smoke,    response: fire, device: Hall smoke }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    SitePlan plan = input.plan();
    boolean hasGarage = hasRoom(plan, RoomUse.GARAGE);
    if (!SleepingRooms.hasAny(plan) || !(hasGarage || hasRoom(plan, RoomUse.PLANT))) {
      return;
    }
    if (!SleepingRooms.isJudged(plan)) {
      report.notAssessed(
          PlanPath.of("regime"),
          "whether carbon monoxide detectors are where people sleep, since no regime for fire is named",
          "regime: [nfpa72-household]");
      return;
    }
    if (SleepingRooms.isPlaceOpen(plan, ZoneResponse.CARBON_MONOXIDE, DETECTORS)) {
      report.notAssessed(
          PlanPath.of("devices"),
          "whether carbon monoxide detectors are where people sleep, since the plan does not give the room of"
              + " each",
          "room: Landing");
      return;
    }
    Set<String> watched = SleepingRooms.watched(plan, ZoneResponse.CARBON_MONOXIDE, DETECTORS);
    String source = hasGarage ? "a garage" : "a plant room";
    Severity severity = hasGarage ? Severity.ERROR : Severity.WARNING;
    for (Floor floor : plan.floors()) {
      for (Room bedroom : SleepingRooms.bedrooms(floor)) {
        report.judged();
        List<String> outside = SleepingRooms.roomsOutside(floor, bedroom);
        if (!watched.contains(bedroom.name()) && outside.stream().noneMatch(watched::contains)) {
          report.found(
              severity,
              PlanPath.of("floors", floor.name(), "rooms", bedroom.name()),
              "The building has "
                  + source
                  + ", and no carbon monoxide detector is in or outside bedroom '"
                  + bedroom.name()
                  + "'.",
              "Plan one "
                  + (outside.isEmpty() ? "outside its door" : "in " + Words.names(outside))
                  + ", on a carbon-monoxide zone.",
              Involved.rooms(outside.isEmpty() ? List.of(bedroom.name()) : outside));
        }
      }
    }
  }

  private static boolean hasRoom(SitePlan plan, RoomUse use) {
    return plan.floors().stream()
        .flatMap(floor -> floor.rooms().stream())
        .anyMatch(room -> room.use().orNull() == use);
  }
}
