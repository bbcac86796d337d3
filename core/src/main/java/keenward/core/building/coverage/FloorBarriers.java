package keenward.core.building.coverage;

import java.util.ArrayList;
import java.util.List;
import keenward.core.building.FloorGeometry;
import keenward.core.building.WallPieces;
import keenward.core.building.WallSegment;
import keenward.core.building.plane.Barrier;
import keenward.core.building.plane.Barriers;
import keenward.core.plan.Fact;
import keenward.core.plan.Furniture;
import keenward.core.plan.OpeningKind;
import keenward.core.quantities.Length;

/**
 * What infra-red does not pass on a floor: walls, whatever they are made of, closed leaves, panes,
 * and things that stand as high as a man's chest. Only a doorway without a leaf is open. A dual
 * detector alarms where both its parts see; microwave passes all that infra-red passes, so the same
 * barriers bound it.
 */
public final class FloorBarriers {

  /**
   * What is lower than this hides nobody who walks upright. Common practice, no source: about the
   * height of the chest of a small adult.
   */
  private static final double HIDES_FROM_METRES = 1.2;

  private FloorBarriers() {}

  /** The barriers of a floor to the sight of a walker. */
  public static Barriers of(FloorGeometry floor) {
    return of(floor, HIDES_FROM_METRES);
  }

  /**
   * The barriers of a floor.
   *
   * @param fromMetres what is lower is left out; an unknown height is taken to be higher
   */
  static Barriers of(FloorGeometry floor, double fromMetres) {
    List<Barrier> barriers = new ArrayList<>();
    for (WallSegment wall : floor.walls()) {
      if (reaches(wall.height(), fromMetres)) {
        barriers.addAll(
            WallPieces.of(wall, floor, opening -> opening.kind() == OpeningKind.DOORWAY));
      }
    }
    for (Furniture thing : floor.floor().furniture()) {
      if (reaches(thing.height(), fromMetres)) {
        barriers.addAll(WallPieces.sides(thing.outline()));
      }
    }
    return Barriers.of(barriers);
  }

  private static boolean reaches(Fact<Length> height, double metres) {
    return height.map(Length::metres).orElse(Double.MAX_VALUE) >= metres;
  }
}
