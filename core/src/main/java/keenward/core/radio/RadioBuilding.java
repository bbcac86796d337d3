package keenward.core.radio;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import keenward.core.building.Building;
import keenward.core.building.DevicePlace;
import keenward.core.building.FloorGeometry;
import keenward.core.building.OpeningPlace;
import keenward.core.building.RoomGeometry;
import keenward.core.building.WallSegment;
import keenward.core.building.coverage.Eye;
import keenward.core.building.plane.Polygons;
import keenward.core.plan.Device;
import keenward.core.plan.Material;
import keenward.core.plan.MissingFact;
import keenward.core.plan.PlanPath;
import keenward.core.plan.Point;
import keenward.core.plan.PremisesKind;
import keenward.core.plan.SitePlan;
import keenward.core.quantities.Length;

/**
 * What stands in the way of radio in a building: its walls, cut at their openings, in storeys one
 * above the other. The floors of a plan share their coordinates.
 */
final class RadioBuilding {

  /** Where a floor does not say how high it is. */
  static final double USUAL_STOREY_METRES = 2.5;

  /** From the ceiling of a storey to the floor of the next. */
  static final double FLOOR_METRES = 0.3;

  /** Where a device does not say how high it hangs. */
  static final double USUAL_HEIGHT_METRES = 2;

  /**
   * A straight piece of wall or an opening in it.
   *
   * @param from one end
   * @param to the other
   * @param lowMetres where it begins, above the lowest floor
   * @param highMetres where it ends
   * @param what what it is, in words
   * @param material what it is made of; empty when the plan does not say
   * @param place its wall in the plan, or its floor
   */
  record Piece(
      Point from,
      Point to,
      double lowMetres,
      double highMetres,
      String what,
      Optional<Material> material,
      PlanPath place) {

    MissingFact missing() {
      return new MissingFact(
          place,
          "what radio loses in " + what + ", since the plan does not say what it is made of",
          "wall material: brick");
    }
  }

  private record Storey(FloorGeometry floor, double levelMetres, double heightMetres) {}

  private final Building building;
  private final Optional<PremisesKind> premises;
  private final List<Storey> storeys = new ArrayList<>();
  private final List<Piece> pieces = new ArrayList<>();
  private final Map<Double, RadioField> fields = new HashMap<>();

  RadioBuilding(SitePlan plan, Building building) {
    this.building = building;
    this.premises = plan.site().premises().find();
    double level = 0;
    for (FloorGeometry floor : building.floors()) {
      double height =
          floor
              .floor()
              .height()
              .map(Length::metres)
              .find()
              .filter(metres -> metres > 0)
              .orElse(USUAL_STOREY_METRES);
      Storey storey = new Storey(floor, level, height);
      storeys.add(storey);
      floor.walls().forEach(wall -> cut(storey, wall));
      level += height + FLOOR_METRES;
    }
  }

  List<Piece> pieces() {
    return pieces;
  }

  Optional<PremisesKind> premises() {
    return premises;
  }

  Building building() {
    return building;
  }

  /** The same building at a frequency; made once. */
  RadioField at(double megahertz) {
    return fields.computeIfAbsent(megahertz, each -> new RadioField(this, each));
  }

  private void cut(Storey storey, WallSegment wall) {
    double high =
        storey.levelMetres()
            + wall.height().map(Length::metres).find().orElse(storey.heightMetres());
    String between = wall.material().find().map(each -> "wall of " + each.word()).orElse("a wall");
    PlanPath place = PlanPath.of("floors", storey.floor().name());
    List<OpeningPlace> openings =
        storey.floor().openings().stream()
            .filter(each -> each.wall().equals(wall))
            .sorted(Comparator.comparingDouble(each -> first(wall, each)))
            .toList();
    double done = 0;
    for (OpeningPlace opening : openings) {
      double begins = Math.clamp(first(wall, opening), done, 1);
      double ends = Math.clamp(last(wall, opening), begins, 1);
      add(storey, wall, done, begins, high, between, wall.material().find(), place);
      Optional<Material> material = Obstacle.material(opening.opening());
      if (material.isPresent()) {
        add(
            storey,
            wall,
            begins,
            ends,
            high,
            "'" + opening.opening().name() + "' of " + material.get().word(),
            material,
            place);
      }
      done = ends;
    }
    add(storey, wall, done, 1, high, between, wall.material().find(), place);
  }

  private void add(
      Storey storey,
      WallSegment wall,
      double begins,
      double ends,
      double high,
      String what,
      Optional<Material> material,
      PlanPath place) {
    if (ends > begins) {
      pieces.add(
          new Piece(
              Polygons.along(wall.start(), wall.end(), begins),
              Polygons.along(wall.start(), wall.end(), ends),
              storey.levelMetres(),
              high,
              what,
              material,
              place));
    }
  }

  private static double first(WallSegment wall, OpeningPlace opening) {
    return Math.min(at(wall, opening.leftJamb()), at(wall, opening.rightJamb()));
  }

  private static double last(WallSegment wall, OpeningPlace opening) {
    return Math.max(at(wall, opening.leftJamb()), at(wall, opening.rightJamb()));
  }

  private static double at(WallSegment wall, Point jamb) {
    return Polygons.parameter(wall.start(), wall.end(), jamb);
  }

  /** Where a device is; empty when the plan does not say, or its room is not drawn. */
  Optional<Spot> find(Device device) {
    Optional<DevicePlace> place = building.findDevice(device.name());
    Optional<Point> at = place.flatMap(DevicePlace::at);
    if (place.isEmpty() || at.isEmpty()) {
      return Optional.empty();
    }
    Optional<Point> clear = at;
    if (place.get().room().isPresent()) {
      Optional<RoomGeometry> room = place.get().room().flatMap(building::findRoom);
      clear = room.flatMap(in -> Eye.in(in, at.get()));
    }
    double height = device.height().map(Length::metres).orElse(USUAL_HEIGHT_METRES);
    return clear.flatMap(point -> spot(place.get().floor(), point, height));
  }

  /** A place on a floor; a height above its ceiling counts as under it. */
  Optional<Spot> spot(String floor, Point at, double heightMetres) {
    for (int i = 0; i < storeys.size(); i++) {
      Storey storey = storeys.get(i);
      if (storey.floor().name().equals(floor)) {
        double height = Math.clamp(heightMetres, 0, storey.heightMetres() - 0.01);
        return Optional.of(new Spot(i, at.xMetres(), at.yMetres(), storey.levelMetres() + height));
      }
    }
    return Optional.empty();
  }
}
