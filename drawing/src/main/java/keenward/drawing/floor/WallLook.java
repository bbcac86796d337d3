package keenward.drawing.floor;

import keenward.core.building.WallSegment;
import keenward.core.plan.Material;
import keenward.drawing.svg.Ink;

/** How walls look: thickness tells outer from inner, a light core tells what is not solid. */
enum WallLook {
  OUTER("outer wall", Ink.WALL, 0.30, 4.5, 7.5, Core.NONE),
  INNER("inner wall", Ink.INNER_WALL, 0.15, 3, 4.5, Core.NONE),
  LIGHT("light inner wall", Ink.LIGHT_WALL, 0.10, 2, 3, Core.NONE),
  METAL("metal wall", Ink.WALL, 0.06, 1.6, 2.2, Core.NONE),
  PANEL("insulated panel", Ink.INNER_WALL, 0.18, 4.5, 6, Core.PAPER),
  GLASS("glass wall", Ink.INNER_WALL, 0.12, 3.6, 4.4, Core.GLASS),
  LOW("wall below 2 m", Ink.LIGHT_WALL, 0.12, 3.6, 4.4, Core.PAPER_DASHED);

  /** What runs along the middle of the wall. */
  enum Core {
    NONE,
    PAPER,
    GLASS,
    PAPER_DASHED
  }

  /** A wall lower than this can be looked over. */
  private static final double LOW_METRES = 2.0;

  private final String caption;
  private final Ink ink;
  private final double metres;
  private final double leastPixels;
  private final double mostPixels;
  private final Core core;

  WallLook(
      String caption, Ink ink, double metres, double leastPixels, double mostPixels, Core core) {
    this.caption = caption;
    this.ink = ink;
    this.metres = metres;
    this.leastPixels = leastPixels;
    this.mostPixels = mostPixels;
    this.core = core;
  }

  static WallLook of(WallSegment wall) {
    if (wall.height().find().filter(height -> height.metres() < LOW_METRES).isPresent()) {
      return LOW;
    }
    Material material = wall.material().orNull();
    if (material == Material.GLASS) {
      return GLASS;
    }
    if (wall.isOuter()) {
      return OUTER;
    }
    if (material == null) {
      return INNER;
    }
    return switch (material) {
      case PLASTERBOARD, WOOD -> LIGHT;
      case INSULATED_PANEL -> PANEL;
      case METAL -> METAL;
      case BRICK, BLOCK, CONCRETE, STONE, GLASS -> INNER;
    };
  }

  String caption() {
    return caption;
  }

  Ink ink() {
    return ink;
  }

  Core core() {
    return core;
  }

  /** Thickness in the drawing. */
  double pixels(double scale) {
    return Math.clamp(metres * scale, leastPixels, mostPixels);
  }
}
