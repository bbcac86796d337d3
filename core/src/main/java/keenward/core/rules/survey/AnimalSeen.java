package keenward.core.rules.survey;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import keenward.core.building.DevicePlace;
import keenward.core.building.coverage.CoverageMap;
import keenward.core.building.coverage.DetectorView;
import keenward.core.plan.Device;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Room;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.rules.CheckInput;
import keenward.core.rules.Involved;
import keenward.core.rules.Kinds;
import keenward.core.rules.Report;
import keenward.core.rules.Rule;
import keenward.core.rules.RuleCard;
import keenward.core.rules.RuleFamily;
import keenward.core.rules.Severity;
import keenward.core.rules.Source;
import keenward.core.rules.Words;

/** A motion detector without pet allowance sees floor on which an animal moves about. */
public final class AnimalSeen implements Rule {

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.SURVEY, 9, "animal-seen", Severity.WARNING)
          .source(Source.practice())
          .purpose(
              "Looks for motion detectors of armed zones, without pet allowance, that see floor of a room with"
                  + " `animals: yes`, from whichever room.")
          .consequence("The animal sets off alarms as soon as the system is armed.")
          .limits(
              "A detector of which it is not known what it sees is taken to see its own room. Pet allowance is as its data"
                  + " sheet states it: an animal that climbs or is larger alarms all the same. A zone that gives a reason is let pass.")
          .remedy(
              "Fit a detector with pet allowance, turn it away, or keep the animal out of its sight.")
          .broken(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Hall:    { use: hall, outline: [[0, 0], [6, 0], [6, 4], [0, 4]] }
                    Kitchen: { use: kitchen, animals: yes, outline: [[6, 0], [10, 0], [10, 4], [6, 4]] }
                  openings:
                    Kitchen way: { kind: doorway, between: [Hall, Kitchen], at: 1 m, width: 2 m }
              devices:
                Hall motion: { kind: motion, wiring: wired, room: Hall, at: [0.1, 2], bearing: 90 deg, coverage: { pattern: fan, range: 12 m, angle: 90 deg, pet allowance: no } }
              zones:
                1: { name: Hall, response: instant, device: Hall motion }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Hall:    { use: hall, outline: [[0, 0], [6, 0], [6, 4], [0, 4]] }
                    Kitchen: { use: kitchen, animals: yes, outline: [[6, 0], [10, 0], [10, 4], [6, 4]] }
                  openings:
                    Kitchen way: { kind: doorway, between: [Hall, Kitchen], at: 1 m, width: 2 m }
              devices:
                Hall motion: { kind: motion, wiring: wired, room: Hall, at: [0.1, 2], bearing: 90 deg, coverage: { pattern: fan, range: 12 m, angle: 90 deg, pet allowance: yes } }
              zones:
                1: { name: Hall, response: instant, device: Hall motion }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Hall:    { use: hall, outline: [[0, 0], [6, 0], [6, 4], [0, 4]] }
                    Kitchen: { use: kitchen, animals: yes, outline: [[6, 0], [10, 0], [10, 4], [6, 4]] }
                  openings:
                    Kitchen way: { kind: doorway, between: [Hall, Kitchen], at: 1 m, width: 2 m }
              devices:
                Hall motion: { kind: motion, wiring: wired, room: Hall, at: [0.1, 0.1], bearing: 0 deg, coverage: { pattern: fan, range: 12 m, angle: 20 deg, pet allowance: no } }
              zones:
                1: { name: Hall, response: instant, device: Hall motion }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    List<Room> rooms =
        input.plan().floors().stream()
            .flatMap(floor -> floor.rooms().stream())
            .filter(room -> room.animals().orElse(false))
            .toList();
    if (rooms.isEmpty()) {
      return;
    }
    Map<String, DetectorView> views = input.views().byDevice();
    for (Device device : armedMotion(input.plan())) {
      report.judged();
      List<String> seen =
          rooms.stream()
              .map(Room::name)
              .filter(room -> seesAny(input, views, device, room))
              .toList();
      if (!seen.isEmpty()) {
        judge(device, seen, report);
      }
    }
  }

  private static void judge(Device device, List<String> seen, Report report) {
    Optional<Boolean> allowance =
        device.traits().coverage().find().flatMap(coverage -> coverage.petAllowance().find());
    PlanPath place = PlanPath.of("devices", device.name());
    if (allowance.isEmpty()) {
      report.notAssessed(
          place,
          "whether '" + device.name() + "' minds the animal in " + Words.names(seen),
          "coverage: { pet allowance: yes }");
    } else if (!allowance.get()) {
      report.found(
          place,
          "'"
              + device.name()
              + "' has no pet allowance and sees floor of "
              + Words.names(seen)
              + ", where an animal moves about.",
          "Fit a detector with pet allowance, turn '"
              + device.name()
              + "' away, or keep the animal out.",
          Involved.devices(List.of(device.name())).and(Involved.rooms(seen)));
    }
  }

  /** Motion detectors of zones that are armed in some mode, and for which no reason is given. */
  private static Set<Device> armedMotion(SitePlan plan) {
    Set<Device> detectors = new LinkedHashSet<>();
    for (Zone zone : plan.zones()) {
      if (Kinds.isArmedBurglary(zone.response()) && zone.reason().find().isEmpty()) {
        for (ZoneDevice each : zone.devices()) {
          if (each instanceof ZoneDevice.Fitted(Device device, var ignored)
              && Kinds.isRoomMotion(device.kind())) {
            detectors.add(device);
          }
        }
      }
    }
    return detectors;
  }

  private static boolean seesAny(
      CheckInput input, Map<String, DetectorView> views, Device device, String room) {
    DetectorView view = views.get(device.name());
    if (view != null && input.building().findRoom(room).isPresent()) {
      return CoverageMap.looksInto(input.building(), view, room);
    }
    return input
        .building()
        .findDevice(device.name())
        .flatMap(DevicePlace::room)
        .or(() -> device.room().find())
        .filter(room::equals)
        .isPresent();
  }
}
