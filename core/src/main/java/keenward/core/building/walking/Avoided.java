package keenward.core.building.walking;

import java.util.List;
import java.util.Map;
import java.util.Set;
import keenward.core.plan.Point;

/**
 * What a walker keeps away from besides walls and furniture.
 *
 * @param areas outlines by the name of their floor
 * @param openings names of openings that they do not pass
 */
public record Avoided(Map<String, List<List<Point>>> areas, Set<String> openings) {

  static final Avoided NOTHING = new Avoided(Map.of(), Set.of());

  public Avoided {
    areas = Map.copyOf(areas);
    openings = Set.copyOf(openings);
  }
}
