package keenward.core.building.coverage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import keenward.core.building.FloorGeometry;
import keenward.core.building.OpeningPlace;
import keenward.core.building.WallSegment;
import keenward.core.plan.Fact;
import keenward.core.plan.Furniture;
import keenward.core.plan.OpeningKind;
import keenward.core.plan.Point;
import keenward.core.quantities.Length;

/**
 * What infra-red does not pass on a floor: walls, whatever they are made of, closed leaves, panes,
 * and things that stand as high as a man's chest. Only a doorway without a leaf is open. A dual
 * detector alarms where both its parts see; microwave passes all that infra-red passes, so the same
 * barriers bound it.
 */
final class FloorBarriers {

  /**
   * What is lower than this hides nobody who walks upright. Common practice, no source: about the
   * height of the chest of a small adult.
   */
  private static final double HIDES_FROM_METRES = 1.2;

  private FloorBarriers() {}

  static Barriers of(FloorGeometry floor) {
    List<Barrier> barriers = new ArrayList<>();
    for (WallSegment wall : floor.walls()) {
      if (hides(wall.height())) {
        addWall(barriers, wall, floor);
      }
    }
    for (Furniture thing : floor.floor().furniture()) {
      if (hides(thing.height())) {
        addOutline(barriers, thing.outline());
      }
    }
    return Barriers.of(barriers);
  }

  /** Whether something this high hides a walker; an unknown height is taken to. */
  static boolean hides(Fact<Length> height) {
    return height.map(Length::metres).orElse(Double.MAX_VALUE) >= HIDES_FROM_METRES;
  }

  private static void addWall(List<Barrier> barriers, WallSegment wall, FloorGeometry floor) {
    List<double[]> gaps = new ArrayList<>();
    for (OpeningPlace place : floor.openings()) {
      if (place.wall().equals(wall) && place.opening().kind() == OpeningKind.DOORWAY) {
        double one = along(wall, place.leftJamb());
        double other = along(wall, place.rightJamb());
        gaps.add(new double[] {Math.min(one, other), Math.max(one, other)});
      }
    }
    gaps.sort(Comparator.comparingDouble(gap -> gap[0]));
    double done = 0;
    for (double[] gap : gaps) {
      if (gap[0] > done) {
        barriers.add(new Barrier(at(wall, done), at(wall, gap[0])));
      }
      done = Math.max(done, gap[1]);
    }
    if (done < 1) {
      barriers.add(new Barrier(at(wall, done), wall.end()));
    }
  }

  private static void addOutline(List<Barrier> barriers, List<Point> outline) {
    for (int i = 0; i < outline.size(); i++) {
      barriers.add(new Barrier(outline.get(i), outline.get((i + 1) % outline.size())));
    }
  }

  private static double along(WallSegment wall, Point place) {
    return wall.start().distanceMetres(place) / wall.lengthMetres();
  }

  private static Point at(WallSegment wall, double part) {
    return new Point(
        wall.start().xMetres() + (wall.end().xMetres() - wall.start().xMetres()) * part,
        wall.start().yMetres() + (wall.end().yMetres() - wall.start().yMetres()) * part);
  }
}
