package keenward.core.radio;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.electrical.Figures;
import keenward.core.plan.Material;
import keenward.core.plan.Opening;
import keenward.core.plan.PremisesKind;

/**
 * What a wall, a leaf, a pane or a floor takes from a wave that meets it squarely. Thicknesses are
 * the usual ones, common practice without a source; so are the losses of metal, which no slab
 * formula gives: what comes through a metal wall comes round it.
 *
 * @param decibels the loss
 * @param working how it was found
 * @param source its source
 */
public record Obstacle(double decibels, String working, String source) {

  private static final double METAL_DECIBELS = 30;
  private static final double INSULATED_PANEL_DECIBELS = 40;
  private static final String PRACTICE = "common practice, no source";

  private record Layer(Dielectric material, double metres) {}

  /** A wall, or a leaf or pane. */
  public static Obstacle of(Material material, double megahertz) {
    return switch (material) {
      case BRICK -> slab(megahertz, new Layer(Dielectric.BRICK, 0.11));
      case BLOCK -> slab(megahertz, new Layer(Dielectric.CONCRETE, 0.1));
      case CONCRETE -> slab(megahertz, new Layer(Dielectric.CONCRETE, 0.15));
      // Both boards as one slab: the gap between them loses nothing.
      case PLASTERBOARD -> slab(megahertz, new Layer(Dielectric.PLASTERBOARD, 0.025));
      case WOOD -> slab(megahertz, new Layer(Dielectric.WOOD, 0.04));
      case GLASS -> slab(megahertz, new Layer(Dielectric.GLASS, 0.008));
      case STONE -> slab(megahertz, new Layer(Dielectric.MARBLE, 0.3));
      case METAL -> new Obstacle(METAL_DECIBELS, "metal", PRACTICE);
      case INSULATED_PANEL ->
          new Obstacle(INSULATED_PANEL_DECIBELS, "insulated panel, two metal skins", PRACTICE);
    };
  }

  /** What an opening is made of, shut, where the plan does not say; empty for an open way. */
  public static Optional<Material> material(Opening opening) {
    return opening
        .material()
        .find()
        .or(() ->
            switch (opening.kind()) {
              case DOORWAY -> Optional.empty();
              case WINDOW, FIXED_WINDOW, ROOF_WINDOW -> Optional.of(Material.GLASS);
              case DOOR, DOUBLE_DOOR, SLIDING_DOOR, HATCH -> Optional.of(Material.WOOD);
              case ROLLER_SHUTTER, GATE -> Optional.of(Material.METAL);
            });
  }

  /** A floor between two storeys: boards on joists in a house, concrete elsewhere. */
  public static Obstacle floor(Optional<PremisesKind> premises, double megahertz) {
    return premises.filter(PremisesKind.DWELLING::equals).isPresent()
        ? slab(
            megahertz,
            new Layer(Dielectric.CHIPBOARD, 0.022),
            new Layer(Dielectric.PLASTERBOARD, 0.0125))
        : slab(megahertz, new Layer(Dielectric.CONCRETE, 0.15));
  }

  private static Obstacle slab(double megahertz, Layer... layers) {
    double gigahertz = megahertz / 1000;
    double decibels = 0;
    boolean holds = true;
    List<String> workings = new ArrayList<>();
    for (Layer layer : layers) {
      decibels += layer.material().slabLossDecibels(gigahertz, layer.metres());
      holds &= layer.material().holdsAt(gigahertz);
      workings.add(layer.material().word() + " " + Figures.text(1000 * layer.metres()) + " mm");
    }
    return new Obstacle(
        decibels,
        String.join(" and ", workings),
        "ITU-R P.2040-3, slab" + (holds ? "" : ", extended below its range"));
  }
}
