package keenward.core.building.coverage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import keenward.core.building.Building;
import keenward.core.building.FloorGeometry;
import keenward.core.building.Passage;
import keenward.core.building.RoomGeometry;
import keenward.core.building.plane.Shapes;
import keenward.core.plan.Furniture;
import keenward.core.plan.MissingFact;
import keenward.core.plan.SitePlan;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * What the motion detectors of a plan see of its drawn floors. Only detectors that a zone watches
 * count.
 *
 * @param detectors what each detector sees
 * @param floors how much of each drawn floor is watched
 */
public record CoverageMap(DetectorViews detectors, List<FloorCoverage> floors) {

  /** The most by which a chord may lie inside the arc that it stands for. */
  public static final double ARC_ERROR_METRES = 0.01;

  /** A person is taken to need a way so wide. Common practice, no source. */
  public static final double BODY_METRES = 0.5;

  /** An opening is reached from a gap whose middle line comes this close. */
  private static final double REACH_METRES = BODY_METRES / 2 + 0.05;

  /** Smaller gaps than the floor under a person are rounding of corners. */
  private static final double LEAST_GAP_SQUARE_METRES = BODY_METRES * BODY_METRES;

  public CoverageMap {
    floors = List.copyOf(floors);
  }

  /** What the detectors of a plan see of the building made of it. */
  public static CoverageMap of(SitePlan plan, Building building) {
    return of(building, DetectorViews.of(plan, building));
  }

  /** The same where it is known already what each detector sees. */
  public static CoverageMap of(Building building, DetectorViews seen) {
    return new Maker(building, seen).make();
  }

  /** What each motion detector sees, in the order of the plan. */
  public List<DetectorView> views() {
    return detectors.views();
  }

  /** What could not be told. */
  public List<MissingFact> notAssessed() {
    return detectors.notAssessed();
  }

  /** What a detector sees; empty when it is no motion detector, or could not be told. */
  public Optional<DetectorView> findView(String device) {
    return views().stream().filter(view -> view.device().name().equals(device)).findFirst();
  }

  /** The floor with this name. */
  public Optional<FloorCoverage> findFloor(String name) {
    return floors.stream().filter(floor -> floor.floor().equals(name)).findFirst();
  }

  /** Whether a detector sees any floor of a room on which a person could stand. */
  public static boolean looksInto(Building building, DetectorView view, String room) {
    return building
        .findFloor(view.floor())
        .flatMap(floor -> floor.findRoom(room))
        .filter(drawn ->
            Shapes.both(Shapes.area(drawn.outline()), area(view)).getArea()
                >= LEAST_GAP_SQUARE_METRES)
        .isPresent();
  }

  private static Geometry area(DetectorView view) {
    return Shapes.union(view.seen().outlines(ARC_ERROR_METRES).stream().map(Shapes::area).toList());
  }

  private static final class Maker {
    private final Building building;
    private final DetectorViews detectors;

    Maker(Building building, DetectorViews detectors) {
      this.building = building;
      this.detectors = detectors;
    }

    CoverageMap make() {
      List<FloorCoverage> floors = new ArrayList<>();
      for (FloorGeometry floor : building.floors()) {
        if (!floor.rooms().isEmpty()) {
          floors.add(cover(floor));
        }
      }
      return new CoverageMap(detectors, floors);
    }

    private FloorCoverage cover(FloorGeometry floor) {
      List<DetectorView> here =
          detectors.views().stream().filter(view -> view.floor().equals(floor.name())).toList();
      List<Geometry> areas = here.stream().map(CoverageMap::area).toList();
      Geometry furniture =
          Shapes.union(
              floor.floor().furniture().stream()
                  .map(Furniture::outline)
                  .map(Shapes::area)
                  .toList());
      return new FloorCoverage(
          floor.name(),
          floor.rooms().stream().map(room -> cover(room, here, areas, furniture)).toList());
    }

    private RoomCoverage cover(
        RoomGeometry room, List<DetectorView> views, List<Geometry> areas, Geometry furniture) {
      Geometry floor = Shapes.less(Shapes.area(room.outline()), furniture);
      List<String> detectors = new ArrayList<>();
      Geometry seen = Shapes.nothing();
      Geometry twice = Shapes.nothing();
      for (int i = 0; i < areas.size(); i++) {
        if (!areas.get(i).getEnvelopeInternal().intersects(floor.getEnvelopeInternal())) {
          continue;
        }
        Geometry part = Shapes.both(floor, areas.get(i));
        // A sliver through a wall's thickness of rounding is not a view.
        if (part.getArea() >= LEAST_GAP_SQUARE_METRES) {
          detectors.add(views.get(i).device().name());
          twice = Shapes.union(List.of(twice, Shapes.both(seen, part)));
          seen = Shapes.union(List.of(seen, part));
        }
      }
      return new RoomCoverage(
          room.name(),
          floor.getArea(),
          seen.getArea(),
          twice.getArea(),
          detectors,
          gaps(room.name(), Shapes.less(floor, seen)));
    }

    private List<Gap> gaps(String room, Geometry unseen) {
      List<Gap> gaps = new ArrayList<>();
      for (Polygon middle : Shapes.polygons(unseen.buffer(-BODY_METRES / 2))) {
        Geometry gap = Shapes.both(middle.buffer(BODY_METRES / 2), unseen);
        if (gap.getArea() >= LEAST_GAP_SQUARE_METRES) {
          gaps.add(new Gap(gap.getArea(), Shapes.rings(gap), reaches(room, middle)));
        }
      }
      gaps.sort(Comparator.comparingDouble(Gap::squareMetres).reversed());
      return gaps;
    }

    private List<String> reaches(String room, Geometry middle) {
      List<String> reached = new ArrayList<>();
      for (Passage passage : building.graph().passagesOf(room)) {
        passage
            .jambs()
            .filter(jambs ->
                Shapes.line(jambs.left(), jambs.right()).isWithinDistance(middle, REACH_METRES))
            .ifPresent(jambs -> reached.add(passage.name()));
      }
      return reached;
    }
  }
}
