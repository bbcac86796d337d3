package keenward.cli.command;

import java.util.List;
import java.util.Optional;
import keenward.core.building.Building;
import keenward.core.plan.SitePlan;
import keenward.drawing.floor.FloorDrawing;
import keenward.drawing.floor.FloorOptions;
import keenward.drawing.svg.Palette;
import keenward.usecases.site.BadInput;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** Options of commands whose result can be drawn. */
final class FloorChoice {

  @Option(
      names = "--format",
      paramLabel = "text|json|svg",
      description = "How to print the result (default: ${DEFAULT-VALUE}).")
  PictureFormat format = PictureFormat.text;

  @Option(
      names = "--floor",
      paramLabel = "NAME",
      description = "The floor to draw with --format svg; needed where several are drawn.")
  @Nullable String floor;

  /** The drawing of the floor that was asked for, or of the only one. */
  String svg(SitePlan plan, Building building, FloorOptions options) throws BadInput {
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
