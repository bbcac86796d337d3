package keenward.drawing.floor;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.DeviceTraits;
import keenward.core.plan.DrawingUnit;
import keenward.core.plan.EdgeSelector;
import keenward.core.plan.Fact;
import keenward.core.plan.Floor;
import keenward.core.plan.Furniture;
import keenward.core.plan.Hinge;
import keenward.core.plan.Material;
import keenward.core.plan.Opening;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.PanelSettings;
import keenward.core.plan.Partition;
import keenward.core.plan.Point;
import keenward.core.plan.Room;
import keenward.core.plan.RoomUse;
import keenward.core.plan.Site;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Stair;
import keenward.core.plan.Supply;
import keenward.core.plan.Swing;
import keenward.core.plan.Wall;
import keenward.core.plan.Wiring;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.plan.ZoneResponse;
import keenward.core.quantities.Angle;
import keenward.core.quantities.Frequency;
import keenward.core.quantities.Length;
import keenward.core.quantities.Level;

/** Builds plans to draw; numbers are metres. */
final class PlanSketch {

  private final String site;
  private final List<Floor> floors = new ArrayList<>();
  private final List<Room> rooms = new ArrayList<>();
  private final List<Wall> walls = new ArrayList<>();
  private final List<Opening> openings = new ArrayList<>();
  private final List<Furniture> furniture = new ArrayList<>();
  private final List<Stair> stairs = new ArrayList<>();
  private final Map<String, Device> devices = new LinkedHashMap<>();
  private final List<Supply> supplies = new ArrayList<>();
  private final List<Zone> zones = new ArrayList<>();
  private Fact<String> panelRoom = Fact.missing();

  PlanSketch(String site) {
    this.site = site;
  }

  private static Length metres(double value) {
    return new Length(value, value + " m");
  }

  private static List<Point> points(double... coordinates) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i < coordinates.length; i += 2) {
      points.add(new Point(coordinates[i], coordinates[i + 1]));
    }
    return points;
  }

  PlanSketch room(String name, RoomUse use, double... coordinates) {
    rooms.add(new Room(name, Fact.of(use), Fact.missing(), Fact.missing(), points(coordinates)));
    return this;
  }

  PlanSketch wall(String room, String beyond, Material material) {
    walls.add(
        new Wall(
            new EdgeSelector(room, beyond, Fact.missing()), Fact.of(material), Fact.missing()));
    return this;
  }

  PlanSketch lowWall(String room, String beyond) {
    walls.add(
        new Wall(
            new EdgeSelector(room, beyond, Fact.missing()), Fact.missing(), Fact.of(metres(1.1))));
    return this;
  }

  PlanSketch opening(
      String name,
      OpeningKind kind,
      String room,
      String beyond,
      int edge,
      double at,
      double width) {
    return opening(name, kind, room, beyond, edge, at, width, Fact.missing(), Fact.missing());
  }

  PlanSketch door(
      String name, String room, String beyond, int edge, double at, Hinge hinge, Swing opens) {
    return opening(
        name, OpeningKind.DOOR, room, beyond, edge, at, 0.9, Fact.of(hinge), Fact.of(opens));
  }

  PlanSketch opening(
      String name,
      OpeningKind kind,
      String room,
      String beyond,
      int edge,
      double at,
      double width,
      Fact<Hinge> hinge,
      Fact<Swing> opens) {
    openings.add(
        new Opening(
            name,
            kind,
            new EdgeSelector(room, beyond, Fact.of(edge)),
            Fact.of(metres(at)),
            Fact.of(metres(width)),
            Fact.missing(),
            hinge,
            opens,
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing()));
    return this;
  }

  PlanSketch openingWithoutPlace(String name, OpeningKind kind, String room, String beyond) {
    openings.add(
        new Opening(
            name,
            kind,
            new EdgeSelector(room, beyond, Fact.missing()),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing()));
    return this;
  }

  PlanSketch furniture(String name, double... coordinates) {
    furniture.add(new Furniture(name, points(coordinates), Fact.missing(), Fact.missing()));
    return this;
  }

  PlanSketch stair(String name, String room, String to) {
    stairs.add(Stair.between(name, room, to));
    return this;
  }

  PlanSketch floor(String name, DrawingUnit unit) {
    floors.add(
        new Floor(
            name,
            unit,
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            rooms,
            walls,
            openings,
            furniture,
            stairs,
            Fact.missing()));
    rooms.clear();
    walls.clear();
    openings.clear();
    furniture.clear();
    stairs.clear();
    return this;
  }

  /** A device at a place. */
  PlanSketch device(String name, DeviceKind kind, String room, double x, double y) {
    return device(
        name, kind, Fact.of(room), Fact.missing(), Fact.of(new Point(x, y)), Fact.missing());
  }

  /** A detector that looks somewhere. */
  PlanSketch device(String name, DeviceKind kind, String room, double x, double y, double bearing) {
    return device(
        name,
        kind,
        Fact.of(room),
        Fact.missing(),
        Fact.of(new Point(x, y)),
        Fact.of(new Angle(bearing, bearing + " deg")));
  }

  /** A device on an opening. */
  PlanSketch device(String name, DeviceKind kind, String room, String opening) {
    return device(name, kind, Fact.of(room), Fact.of(opening), Fact.missing(), Fact.missing());
  }

  /** A device of which only the room is known. */
  PlanSketch device(String name, DeviceKind kind, String room) {
    return device(name, kind, Fact.of(room), Fact.missing(), Fact.missing(), Fact.missing());
  }

  private PlanSketch device(
      String name,
      DeviceKind kind,
      Fact<String> room,
      Fact<String> opening,
      Fact<Point> at,
      Fact<Angle> bearing) {
    DeviceTraits none = DeviceTraits.none();
    return device(name, traits(kind, none), room, opening, at, bearing);
  }

  /** A radio device on 868.3 MHz that sends and hears at a level. */
  PlanSketch radio(
      String name, DeviceKind kind, String room, double x, double y, double decibelMilliwatts) {
    DeviceTraits none = DeviceTraits.none();
    Level level = new Level(decibelMilliwatts, decibelMilliwatts + " dBm");
    DeviceTraits traits =
        new DeviceTraits(
            Fact.of(kind),
            Fact.of(Wiring.RADIO),
            none.inputs(),
            none.standbyCurrent(),
            none.alarmCurrent(),
            none.alarmTime(),
            none.minimumVoltage(),
            none.coverage(),
            none.cellLife(),
            none.replaceAfter(),
            none.securityGrade(),
            Fact.of(level),
            Fact.of(new Frequency(868.3, "868.3 MHz")),
            Fact.of(level),
            none.checkIn(),
            none.latching(),
            none.sound(),
            none.gaps(),
            none.load());
    return device(
        name, traits, Fact.of(room), Fact.missing(), Fact.of(new Point(x, y)), Fact.missing());
  }

  private static DeviceTraits traits(DeviceKind kind, DeviceTraits none) {
    return new DeviceTraits(
        Fact.of(kind),
        none.wiring(),
        none.inputs(),
        none.standbyCurrent(),
        none.alarmCurrent(),
        none.alarmTime(),
        none.minimumVoltage(),
        none.coverage(),
        none.cellLife(),
        none.replaceAfter(),
        none.securityGrade(),
        none.sensitivity(),
        none.frequency(),
        none.radioPower(),
        none.checkIn(),
        none.latching(),
        none.sound(),
        none.gaps(),
        none.load());
  }

  private PlanSketch device(
      String name,
      DeviceTraits traits,
      Fact<String> room,
      Fact<String> opening,
      Fact<Point> at,
      Fact<Angle> bearing) {
    devices.put(
        name,
        new Device(
            name,
            Fact.missing(),
            traits,
            room,
            opening,
            at,
            Fact.missing(),
            Fact.missing(),
            bearing,
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing()));
    return this;
  }

  PlanSketch panel(String room) {
    panelRoom = Fact.of(room);
    return this;
  }

  PlanSketch supply(String name, String room) {
    supplies.add(
        new Supply(
            name,
            Fact.of(room),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing()));
    return this;
  }

  PlanSketch zone(int number, String name, ZoneResponse response, String device) {
    Device fitted = devices.get(device);
    if (fitted == null) {
      throw new IllegalArgumentException("no device " + device);
    }
    return zone(number, name, response, new ZoneDevice.Fitted(fitted, Fact.missing()));
  }

  PlanSketch zone(int number, String name, ZoneResponse response, DeviceKind kind) {
    return zone(number, name, response, new ZoneDevice.Unplaced(kind));
  }

  private PlanSketch zone(int number, String name, ZoneResponse response, ZoneDevice device) {
    zones.add(
        new Zone(
            number,
            name,
            response,
            List.of(Partition.ONLY.name()),
            List.of(device),
            Fact.missing(),
            List.of(),
            Fact.missing(),
            Fact.missing(),
            List.of(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            List.of(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing()));
    return this;
  }

  SitePlan plan() {
    PanelSettings none = PanelSettings.none();
    PanelSettings panel =
        new PanelSettings(
            Fact.missing(),
            panelRoom,
            Fact.missing(),
            none.entryDelays(),
            none.exitTime(),
            none.sounderTime(),
            none.abortWindow(),
            none.cancelWindow(),
            none.recentClosingWindow(),
            none.swingerLimit(),
            none.exitRestart(),
            none.automaticStay(),
            none.mainsFailureReport(),
            none.radioSupervision(),
            none.keypadLockOut(),
            none.crossZones(),
            none.loopThresholds());
    return new SitePlan(
        new Site(
            site,
            Fact.missing(),
            List.of(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing()),
        List.of(),
        Fact.missing(),
        List.of(),
        floors,
        List.of(),
        List.copyOf(devices.values()),
        supplies,
        List.of(),
        List.of(),
        panel,
        List.of(Partition.ONLY),
        false,
        zones,
        List.of(),
        Fact.missing(),
        List.of());
  }
}
