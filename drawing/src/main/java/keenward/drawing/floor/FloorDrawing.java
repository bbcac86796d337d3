package keenward.drawing.floor;

import java.util.List;
import java.util.Optional;
import keenward.core.building.Building;
import keenward.core.building.FloorGeometry;
import keenward.core.plan.SitePlan;

/** Draws floors as SVG. The same plan and options give the same text. */
public final class FloorDrawing {

  private FloorDrawing() {}

  /** Names of the floors that have a drawing, in the order of the plan. */
  public static List<String> floors(Building building) {
    return building.floors().stream()
        .filter(floor -> !floor.rooms().isEmpty())
        .map(FloorGeometry::name)
        .toList();
  }

  /**
   * The drawing of a floor; empty when the plan has no such floor or no room of it has an outline.
   *
   * @param plan the plan
   * @param building the building made of that plan
   * @param floor name of the floor
   * @param options how it is drawn
   */
  public static Optional<String> svg(
      SitePlan plan, Building building, String floor, FloorOptions options) {
    return building
        .findFloor(floor)
        .filter(geometry -> !geometry.rooms().isEmpty())
        .map(geometry -> {
          FloorLayout layout = FloorLayout.of(plan, building, geometry, options);
          Legend legend = Legend.of(layout, geometry, options);
          return new FloorPainter(plan, geometry, layout, legend, options).paint();
        });
  }
}
