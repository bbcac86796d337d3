package keenward.core.building;

import java.util.ArrayList;
import java.util.List;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.DeviceTraits;
import keenward.core.plan.DrawingUnit;
import keenward.core.plan.EdgeSelector;
import keenward.core.plan.Fact;
import keenward.core.plan.Floor;
import keenward.core.plan.Material;
import keenward.core.plan.Opening;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.PanelSettings;
import keenward.core.plan.Partition;
import keenward.core.plan.Point;
import keenward.core.plan.Room;
import keenward.core.plan.Site;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Stair;
import keenward.core.plan.Wall;
import keenward.core.quantities.Length;

/**
 * Builds small plans for tests: floors one after another, each with what was added since the last.
 */
final class FloorSketch {

  private final List<Floor> floors = new ArrayList<>();
  private final List<Room> rooms = new ArrayList<>();
  private final List<Wall> walls = new ArrayList<>();
  private final List<Opening> openings = new ArrayList<>();
  private final List<Stair> stairs = new ArrayList<>();
  private final List<Device> devices = new ArrayList<>();
  private Fact<Length> snap = Fact.missing();

  FloorSketch snap(double metres) {
    snap = Fact.of(metres(metres));
    return this;
  }

  /** A room with corners x, y, x, y ... */
  FloorSketch room(String name, double... coordinates) {
    List<Point> outline = new ArrayList<>();
    for (int i = 0; i < coordinates.length; i += 2) {
      outline.add(new Point(coordinates[i], coordinates[i + 1]));
    }
    return room(name, outline);
  }

  FloorSketch room(String name, List<Point> outline) {
    rooms.add(new Room(name, Fact.missing(), Fact.missing(), Fact.missing(), outline));
    return this;
  }

  FloorSketch wall(String room, String beyond, Fact<Integer> edge, Material material) {
    walls.add(new Wall(new EdgeSelector(room, beyond, edge), Fact.of(material), Fact.missing()));
    return this;
  }

  FloorSketch opening(
      String name,
      OpeningKind kind,
      String room,
      String beyond,
      Fact<Integer> edge,
      double at,
      double width) {
    return opening(name, kind, room, beyond, edge, Fact.of(metres(at)), Fact.of(metres(width)));
  }

  FloorSketch opening(
      String name,
      OpeningKind kind,
      String room,
      String beyond,
      Fact<Integer> edge,
      Fact<Length> at,
      Fact<Length> width) {
    openings.add(
        new Opening(
            name,
            kind,
            new EdgeSelector(room, beyond, edge),
            at,
            width,
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing()));
    return this;
  }

  FloorSketch stair(String name, String room, String to) {
    stairs.add(Stair.between(name, room, to));
    return this;
  }

  FloorSketch device(String name, Fact<String> room, Fact<String> opening, Fact<Point> at) {
    DeviceTraits kind =
        new DeviceTraits(
            Fact.of(DeviceKind.MOTION),
            Fact.missing(),
            List.of(),
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
            Fact.missing(),
            Fact.missing(),
            Fact.missing());
    devices.add(
        new Device(
            name,
            Fact.missing(),
            kind,
            room,
            opening,
            at,
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

  /** Ends a floor. */
  FloorSketch floor(String name) {
    return floor(name, DrawingUnit.METRES);
  }

  /** Ends a floor whose coordinates are written in a unit. */
  FloorSketch floor(String name, DrawingUnit unit) {
    floors.add(
        new Floor(
            name,
            unit,
            Fact.missing(),
            snap,
            Fact.missing(),
            rooms,
            walls,
            openings,
            List.of(),
            stairs,
            Fact.missing()));
    rooms.clear();
    walls.clear();
    openings.clear();
    stairs.clear();
    return this;
  }

  SitePlan plan() {
    Site site =
        new Site(
            "Sketch",
            Fact.missing(),
            List.of(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing(),
            Fact.missing());
    return new SitePlan(
        site,
        List.of(),
        Fact.missing(),
        List.of(),
        floors,
        List.of(),
        devices,
        List.of(),
        List.of(),
        List.of(),
        PanelSettings.none(),
        List.of(Partition.ONLY),
        false,
        List.of(),
        List.of(),
        Fact.missing(),
        List.of());
  }

  Building build() {
    return Building.of(plan());
  }

  static Length metres(double value) {
    return new Length(value, value + " m");
  }
}
