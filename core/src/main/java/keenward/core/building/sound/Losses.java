package keenward.core.building.sound;

import java.util.Optional;
import keenward.core.plan.Material;
import keenward.core.plan.Opening;
import keenward.core.plan.OpeningKind;

/**
 * How much of a sound stays behind what it passes, in decibels: usual single figures of building
 * elements, from memory; no table was at hand. The leaf of a door is about 20 dB (rule of thumb of
 * fire alarm practice, from memory), since sound comes round its edges.
 */
public final class Losses {

  private static final double LEAF_DECIBELS = 20;
  private static final double PANE_DECIBELS = 28;

  private Losses() {}

  /** The level at a distance: it falls with its square. */
  public static double levelAt(double decibels, double atMetres, double metres) {
    return decibels - 20 * Math.log10(metres / atMetres);
  }

  /** A wall; empty when it is not known what it is made of. */
  static Optional<Double> wallDecibels(Optional<Material> material) {
    return material.map(each ->
        switch (each) {
          case PLASTERBOARD -> 33.0;
          case WOOD, GLASS -> 28.0;
          case METAL, INSULATED_PANEL -> 25.0;
          case BRICK, BLOCK -> 45.0;
          case CONCRETE, STONE -> 50.0;
        });
  }

  /** An opening, shut. */
  static double openingDecibels(Opening opening) {
    return switch (opening.kind()) {
      case DOORWAY -> 0;
      case WINDOW, FIXED_WINDOW, ROOF_WINDOW -> PANE_DECIBELS;
      case DOOR, DOUBLE_DOOR, SLIDING_DOOR, ROLLER_SHUTTER, HATCH, GATE -> LEAF_DECIBELS;
    };
  }

  static boolean isOpen(Opening opening) {
    return opening.kind() == OpeningKind.DOORWAY;
  }
}
