package keenward.drawing.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.building.Building;
import keenward.core.building.DevicePlace;
import keenward.core.building.FloorGeometry;
import keenward.core.building.RoomGeometry;
import keenward.core.plan.Device;
import keenward.core.plan.DeviceKind;
import keenward.core.plan.Fact;
import keenward.core.plan.Floor;
import keenward.core.plan.Hinge;
import keenward.core.plan.Point;
import keenward.core.plan.SitePlan;
import keenward.core.plan.Stair;
import keenward.core.plan.Supply;
import keenward.core.plan.Zone;
import keenward.core.plan.ZoneDevice;
import keenward.core.quantities.Angle;
import keenward.drawing.floor.PlacedSymbol.Item;

/** Collects what is drawn on a floor as a symbol, and about where. */
final class FloorItems {

  private final SitePlan plan;
  private final Building building;
  private final FloorGeometry floor;
  private final Frame frame;
  private final List<OpeningShape> openings;
  private final double radius;

  /**
   * A thing and about where it goes.
   *
   * @param item the thing
   * @param room its room; empty for something outside, or in a room without a drawing
   * @param spot where it is; empty when only the room is known
   */
  record Wish(Item item, Optional<RoomGeometry> room, Optional<Spot> spot) {}

  FloorItems(
      SitePlan plan,
      Building building,
      FloorGeometry floor,
      Frame frame,
      List<OpeningShape> openings,
      double radius) {
    this.plan = plan;
    this.building = building;
    this.floor = floor;
    this.frame = frame;
    this.openings = openings;
    this.radius = radius;
  }

  /** What has a stated place first, then what is only known to be in a room. */
  List<Wish> collect() {
    List<Wish> wishes = new ArrayList<>();
    for (DevicePlace place : building.devices()) {
      // A radio control is carried about: it has no place.
      if (place.floor().equals(floor.name()) && place.device().kind() != DeviceKind.FOB) {
        wishes.add(wish(place));
      }
    }
    inRoom(plan.panel().room())
        .ifPresent(room ->
            wishes.add(
                wish("panel", plan.panel().description().orElse("Panel"), Symbol.PANEL, room)));
    for (Supply supply : plan.supplies()) {
      inRoom(supply.room())
          .ifPresent(room -> wishes.add(wish("supply", supply.name(), Symbol.SUPPLY, room)));
    }
    addStairs(wishes);
    List<Wish> sorted = new ArrayList<>(wishes.stream().filter(w -> w.spot().isPresent()).toList());
    wishes.stream()
        .filter(wish -> wish.spot().isEmpty() && wish.room().isPresent())
        .forEach(sorted::add);
    return sorted;
  }

  /** Zones that watch a device. */
  static List<Zone> zonesOf(SitePlan plan, Device device) {
    return plan.zones().stream()
        .filter(zone ->
            zone.devices().stream()
                .anyMatch(each ->
                    each instanceof ZoneDevice.Fitted fitted
                        && fitted.device().name().equals(device.name())))
        .toList();
  }

  private Wish wish(DevicePlace place) {
    Device device = place.device();
    Optional<Spot> stated = place.at().map(frame::at);
    Optional<Spot> spot =
        device.at().isGiven()
            ? stated
            : device.opening().find().flatMap(name -> lockSide(name, place)).or(() -> stated);
    Item item =
        new Item(
            "device",
            device.name(),
            Symbol.of(device.kind()),
            device.bearing().find().map(Angle::degrees),
            zonesOf(plan, device),
            spot.isPresent(),
            "");
    return new Wish(item, place.room().flatMap(floor::findRoom), spot);
  }

  /** Beside the jamb on the lock side of an opening, just inside the device's room. */
  private Optional<Spot> lockSide(String opening, DevicePlace place) {
    return openings.stream()
        .filter(shape -> shape.place().opening().name().equals(opening))
        .findFirst()
        .map(shape -> {
          boolean lockIsLeft =
              shape.place().opening().hinge().find().filter(Hinge.RIGHT::equals).isPresent();
          String first = shape.place().opening().place().room();
          double side = place.room().filter(first::equals).isPresent() ? 1 : -1;
          return (lockIsLeft ? shape.left() : shape.right())
              .along(shape.alongWall(), (lockIsLeft ? -1 : 1) * radius * 0.9)
              .along(shape.inward(), side * (shape.thickness() / 2 + radius + 2));
        });
  }

  private Optional<RoomGeometry> inRoom(Fact<String> room) {
    return room.find().flatMap(floor::findRoom);
  }

  private static Wish wish(String kind, String name, Symbol symbol, RoomGeometry room) {
    return new Wish(
        new Item(kind, name, symbol, Optional.empty(), List.of(), true, ""),
        Optional.of(room),
        Optional.empty());
  }

  private void addStairs(List<Wish> wishes) {
    int here = plan.floors().indexOf(floor.floor());
    for (Floor other : plan.floors()) {
      for (Stair stair : other.stairs()) {
        addStairEnd(wishes, stair, stair.room(), stair.to(), stair.at(), here);
        addStairEnd(wishes, stair, stair.to(), stair.room(), stair.endsAt(), here);
      }
    }
  }

  private void addStairEnd(
      List<Wish> wishes, Stair stair, String end, String otherEnd, Fact<Point> at, int here) {
    Optional<RoomGeometry> room = floor.findRoom(end);
    if (room.isEmpty()) {
      return;
    }
    int there = plan.findFloorOfRoom(otherEnd).map(plan.floors()::indexOf).orElse(here);
    String way = there > here ? "up to " : there < here ? "down to " : "to ";
    wishes.add(
        new Wish(
            new Item(
                "stair",
                stair.name(),
                Symbol.STAIR,
                Optional.empty(),
                List.of(),
                true,
                way + otherEnd),
            room,
            at.map(frame::at).find()));
  }
}
