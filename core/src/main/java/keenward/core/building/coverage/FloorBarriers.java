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

  /** The barriers of a floor. */
  public static Barriers of(FloorGeometry floor) {
    List<Barrier> barriers = new ArrayList<>();
    for (WallSegment wall : floor.walls()) {
      if (hides(wall.height())) {
        barriers.addAll(
            WallPieces.of(wall, floor, opening -> opening.kind() == OpeningKind.DOORWAY));
      }
    }
    for (Furniture thing : floor.floor().furniture()) {
      if (hides(thing.height())) {
        barriers.addAll(WallPieces.sides(thing.outline()));
      }
    }
    return Barriers.of(barriers);
  }

  /** Whether something this high hides a walker; an unknown height is taken to. */
  static boolean hides(Fact<Length> height) {
    return height.map(Length::metres).orElse(Double.MAX_VALUE) >= HIDES_FROM_METRES;
  }
}
