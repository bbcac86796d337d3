package keenward.core.building;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Predicate;
import keenward.core.building.plane.Barrier;
import keenward.core.plan.Opening;
import keenward.core.plan.Point;

/** Walls with gaps where openings are open, and outlines, as barriers. */
public final class WallPieces {

  private WallPieces() {}

  /** What remains of a wall beside those of its openings that are open. */
  public static List<Barrier> of(WallSegment wall, FloorGeometry floor, Predicate<Opening> isOpen) {
    List<double[]> gaps = new ArrayList<>();
    for (OpeningPlace place : floor.openings()) {
      if (place.wall().equals(wall) && isOpen.test(place.opening())) {
        double one = along(wall, place.leftJamb());
        double other = along(wall, place.rightJamb());
        gaps.add(new double[] {Math.min(one, other), Math.max(one, other)});
      }
    }
    gaps.sort(Comparator.comparingDouble(gap -> gap[0]));
    List<Barrier> pieces = new ArrayList<>();
    double done = 0;
    for (double[] gap : gaps) {
      if (gap[0] > done) {
        pieces.add(new Barrier(at(wall, done), at(wall, gap[0])));
      }
      done = Math.max(done, gap[1]);
    }
    if (done < 1) {
      pieces.add(new Barrier(at(wall, done), wall.end()));
    }
    return pieces;
  }

  /** The sides of a closed outline. */
  public static List<Barrier> sides(List<Point> outline) {
    List<Barrier> sides = new ArrayList<>();
    for (int i = 0; i < outline.size(); i++) {
      sides.add(new Barrier(outline.get(i), outline.get((i + 1) % outline.size())));
    }
    return sides;
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
