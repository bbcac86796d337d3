package keenward.core.rules.arming;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import keenward.core.plan.ArmingMode;
import keenward.core.plan.Floor;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Room;
import keenward.core.plan.RoomUse;
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

/** A motion detector is live while people are in its room. */
public final class OccupiedRoomLive implements Rule {

  private static final Set<RoomUse> USED_AT_NIGHT =
      Set.of(RoomUse.BEDROOM, RoomUse.BATHROOM, RoomUse.LANDING);
  private static final Set<RoomUse> USED_AT_HOME =
      Set.of(
          RoomUse.BEDROOM,
          RoomUse.BATHROOM,
          RoomUse.LANDING,
          RoomUse.LIVING,
          RoomUse.KITCHEN,
          RoomUse.HALL,
          RoomUse.STAIRS);

  private static final RuleCard CARD =
      RuleCard.of(RuleFamily.ARMING, 1, "occupied-room-live", Severity.ERROR)
          .source(Source.practice())
          .purpose(
              "Looks for motion detectors that are live in stay or night in rooms where people are then: at night"
                  + " bedrooms, bathrooms and landings; in stay also living rooms, kitchens, halls and stairs.")
          .consequence(
              "The first person who goes to the kitchen sets off the alarm; after the second time nobody arms any"
                  + " more when at home.")
          .limits(
              "Goes by the use of the room, not by who is where. Curtains and beams that guard a window are let"
                  + " pass, and so is a zone that gives a reason.")
          .remedy(
              "Leave the mode out of the zone's `live in:`, or give it the response instant or follower.")
          .broken(
              """
              keenward: 1
              site: Example
              floors:
                Upper:
                  rooms:
                    Landing: { use: landing, outline: [[0, 0], [3, 0], [3, 2], [0, 2]] }
              devices:
                Landing motion: { kind: motion, room: Landing, wiring: wired }
              zones:
                1: { name: Landing, response: instant, device: Landing motion, live in: [away, stay] }
              """)
          .mended(
              """
              keenward: 1
              site: Example
              floors:
                Upper:
                  rooms:
                    Landing: { use: landing, outline: [[0, 0], [3, 0], [3, 2], [0, 2]] }
              devices:
                Landing motion: { kind: motion, room: Landing, wiring: wired }
              zones:
                1: { name: Landing, response: instant, device: Landing motion, live in: [away] }
              """)
          .nearMiss(
              """
              keenward: 1
              site: Example
              floors:
                Ground:
                  rooms:
                    Living room: { use: living, outline: [[0, 0], [5, 0], [5, 4], [0, 4]] }
              devices:
                Living motion: { kind: motion, room: Living room, wiring: wired }
              zones:
                1: { name: Living room, response: instant, device: Living motion, live in: [away, night] }
              """)
          .build();

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void check(CheckInput input, Report report) {
    Map<String, Room> rooms = rooms(input.plan());
    for (Zone zone : input.plan().zones()) {
      if (Kinds.isArmedBurglary(zone.response())) {
        for (ZoneDevice device : zone.devices()) {
          if (Kinds.isRoomMotion(device.kind())) {
            judge(zone, device, rooms, report);
          }
        }
      }
    }
  }

  private static void judge(Zone zone, ZoneDevice device, Map<String, Room> rooms, Report report) {
    List<ArmingMode> atHome = new ArrayList<>(zone.liveModes());
    atHome.remove(ArmingMode.AWAY);
    if (atHome.isEmpty()) {
      report.judged();
      return;
    }
    Optional<RoomUse> use = findRoom(device, rooms).flatMap(room -> room.use().find());
    if (use.isEmpty()) {
      notAssessed(zone, device, rooms, atHome, report);
      return;
    }
    report.judged();
    Set<ArmingMode> wrong = new LinkedHashSet<>();
    for (ArmingMode mode : atHome) {
      if ((mode == ArmingMode.NIGHT ? USED_AT_NIGHT : USED_AT_HOME).contains(use.get())) {
        wrong.add(mode);
      }
    }
    if (!wrong.isEmpty() && !zone.reason().isGiven()) {
      String room = findRoom(device, rooms).map(Room::name).orElse("");
      List<ArmingMode> modes = List.copyOf(wrong);
      report.found(
          zone.liveIn().isEmpty() ? zone.path().then("response") : zone.path().then("live in"),
          Words.atStart(zone)
              + " is live in "
              + Words.words(modes)
              + ", and its "
              + device.kind().word()
              + " detector sees '"
              + room
              + "' (use "
              + use.get().word()
              + "), where people are then.",
          "Let zone " + zone.number() + " be live in away only.",
          Involved.zone(zone.number()).and(Involved.rooms(List.of(room))));
    }
  }

  private static void notAssessed(
      Zone zone,
      ZoneDevice device,
      Map<String, Room> rooms,
      List<ArmingMode> atHome,
      Report report) {
    String subject =
        "whether people are in the way of "
            + Words.zone(zone)
            + ", live in "
            + Words.words(atHome)
            + ", since the plan does not say ";
    Optional<Room> room = findRoom(device, rooms);
    if (room.isPresent()) {
      report.notAssessed(
          PlanPath.of("floors"),
          subject + "what '" + room.get().name() + "' is used for",
          "use: hall");
    } else if (device instanceof ZoneDevice.Fitted fitted) {
      report.notAssessed(
          PlanPath.of("devices", fitted.device().name()),
          subject + "in which room '" + fitted.device().name() + "' is",
          "room: Hall");
    } else {
      report.notAssessed(
          zone.path().then("device"),
          subject + "where its detector is",
          "devices: { "
              + zone.name()
              + " detector: { kind: "
              + device.kind().word()
              + ", room: Hall } }");
    }
  }

  private static Optional<Room> findRoom(ZoneDevice device, Map<String, Room> rooms) {
    return device instanceof ZoneDevice.Fitted fitted
        ? fitted.device().room().find().map(rooms::get)
        : Optional.empty();
  }

  private static Map<String, Room> rooms(SitePlan plan) {
    Map<String, Room> rooms = new LinkedHashMap<>();
    for (Floor floor : plan.floors()) {
      floor.rooms().forEach(room -> rooms.put(room.name(), room));
    }
    return rooms;
  }
}
