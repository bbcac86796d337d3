package keenward.core.building;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.plan.Device;
import keenward.core.plan.Fact;
import keenward.core.plan.Floor;
import keenward.core.plan.Opening;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Point;
import keenward.core.plan.SitePlan;

/** Finds floor, room and place of every device. */
final class DevicePlacer {

  /**
   * A device is fixed to a wall, a siren to its outer face: so far from its room it still belongs
   * to it.
   */
  private static final double FIXED_TO_WALL_METRES = 0.5;

  private final SitePlan plan;
  private final List<FloorGeometry> floors;
  private final List<BuildingProblem> problems;
  private final List<NotPlaced> notPlaced;

  DevicePlacer(
      SitePlan plan,
      List<FloorGeometry> floors,
      List<BuildingProblem> problems,
      List<NotPlaced> notPlaced) {
    this.plan = plan;
    this.floors = floors;
    this.problems = problems;
    this.notPlaced = notPlaced;
  }

  List<DevicePlace> place() {
    List<DevicePlace> places = new ArrayList<>();
    for (Device device : plan.devices()) {
      place(device).ifPresent(places::add);
    }
    return places;
  }

  private Optional<DevicePlace> place(Device device) {
    if (device.room() instanceof Fact.Given<String>(String room)) {
      return plan.findFloorOfRoom(room).map(floor -> inRoom(device, floor, room));
    }
    if (device.opening() instanceof Fact.Given<String>(String opening)) {
      Optional<DevicePlace> place = atOpening(device, opening);
      if (place.isPresent()) {
        return place;
      }
    }
    if (device.at() instanceof Fact.Given<Point>(Point at)) {
      return byPlaceAlone(device, at);
    }
    return Optional.empty();
  }

  private DevicePlace inRoom(Device device, Floor floor, String room) {
    if (device.at() instanceof Fact.Given<Point>(Point at)) {
      Texts texts = new Texts(floor.unit());
      geometry(floor.name())
          .flatMap(geometry -> geometry.findRoom(room))
          .filter(outline -> !outline.contains(at))
          .map(outline -> outline.distanceToWallsMetres(at))
          // Written so that a distance that is no number is reported too.
          .filter(distance -> !(distance <= FIXED_TO_WALL_METRES))
          .ifPresent(distance ->
              problems.add(
                  new BuildingProblem(
                      path(device).then("at"),
                      device.name() + " lies " + texts.length(distance) + " outside " + room,
                      "a place in " + room + ", or on its walls",
                      "correct at: or room:")));
      return new DevicePlace(device, floor.name(), Optional.of(room), Optional.of(at));
    }
    Optional<Point> middle = device.opening().find().flatMap(name -> middle(floor.name(), name));
    return new DevicePlace(device, floor.name(), Optional.of(room), middle);
  }

  private Optional<DevicePlace> atOpening(Device device, String name) {
    for (Floor floor : plan.floors()) {
      for (Opening opening : floor.openings()) {
        if (opening.name().equals(name)) {
          Optional<Point> at = device.at().find().or(() -> middle(floor.name(), name));
          return Optional.of(
              new DevicePlace(device, floor.name(), Optional.of(opening.place().room()), at));
        }
      }
    }
    return Optional.empty();
  }

  private Optional<DevicePlace> byPlaceAlone(Device device, Point at) {
    List<DevicePlace> candidates = new ArrayList<>();
    for (FloorGeometry floor : floors) {
      floor
          .findRoomAt(at)
          .ifPresent(room ->
              candidates.add(
                  new DevicePlace(
                      device, floor.name(), Optional.of(room.name()), Optional.of(at))));
    }
    if (candidates.size() == 1) {
      return Optional.of(candidates.getFirst());
    }
    if (candidates.isEmpty() && floors.size() == 1) {
      return Optional.of(
          new DevicePlace(device, floors.getFirst().name(), Optional.empty(), Optional.of(at)));
    }
    notPlaced.add(
        new NotPlaced(
            path(device),
            device.name() + ", whose place could be on any of " + floors.size() + " floors",
            candidates.isEmpty()
                ? "room: with the room it is in or next to"
                : "room: " + candidates.getFirst().room().orElseThrow()));
    return Optional.empty();
  }

  private Optional<Point> middle(String floor, String opening) {
    return geometry(floor)
        .flatMap(geometry -> geometry.findOpening(opening))
        .map(OpeningPlace::middle);
  }

  private Optional<FloorGeometry> geometry(String floor) {
    return floors.stream().filter(each -> each.name().equals(floor)).findFirst();
  }

  private static PlanPath path(Device device) {
    return PlanPath.of("devices", device.name());
  }
}
