package keenward.usecases.drawn;

import java.util.List;
import java.util.Optional;
import keenward.core.building.Building;
import keenward.core.plan.SitePlan;
import keenward.drawing.floor.FloorDrawing;
import keenward.drawing.floor.FloorOptions;
import keenward.drawing.svg.Palette;
import keenward.usecases.site.BadInput;
import org.jspecify.annotations.Nullable;

/** One floor as a file of its own. */
public final class FloorPicture {

  private FloorPicture() {}

  /**
   * The drawing of a floor.
   *
   * @param floor name of the floor; null for the only one that is drawn
   */
  public static String svg(
      SitePlan plan, Building building, @Nullable String floor, FloorOptions options)
      throws BadInput {
    List<String> drawn = FloorDrawing.floors(building);
    Optional<String> asked =
        floor == null && drawn.size() == 1
            ? Optional.of(drawn.getFirst())
            : Optional.ofNullable(floor);
    Optional<String> svg =
        asked.flatMap(
            name -> FloorDrawing.svg(plan, building, name, options.palette(Palette.PRINT)));
    if (svg.isEmpty()) {
      throw new BadInput(
          "--floor",
          floor == null ? "several floors are drawn, or none" : "no floor '" + floor + "' is drawn",
          drawn.isEmpty() ? "a plan with a drawing" : String.join(", ", drawn),
          drawn.isEmpty() ? "add `floors:` to the plan" : "name one of those");
    }
    return svg.get();
  }
}
