package keenward.drawing.floor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import keenward.core.building.RoomGeometry;
import keenward.drawing.floor.FloorItems.Wish;
import keenward.drawing.svg.Box;
import org.jspecify.annotations.Nullable;

/**
 * Gives each symbol the cheapest free spot: near where the thing is, in its room, clear of walls,
 * door swings and other symbols. Spots are tried in a fixed order, so the same floor is always
 * drawn the same way.
 */
final class SymbolPlacer {

  private static final double WRONG_ROOM_PRICE = 200;
  private static final double PRICE_A_PIXEL = 1;
  private static final int DIRECTIONS = 16;
  private static final double RING_PIXELS = 3;
  private static final double FARTHEST_PIXELS = 110;
  private static final double GAP_PIXELS = 1.5;

  /** A symbol farther from its thing than this gets a line to it. */
  private static final double TETHER_RADII = 2.2;

  private final Obstacles obstacles;
  private final Frame frame;
  private final Box area;
  private final double radius;

  SymbolPlacer(Obstacles obstacles, Frame frame, Box area, double radius) {
    this.obstacles = obstacles;
    this.frame = frame;
    this.area = area;
    this.radius = radius;
  }

  /** The symbol in its place, which is then taken; empty when there is no room for it. */
  Optional<PlacedSymbol> place(Wish wish) {
    Symbol.Outline outline = wish.item().symbol().outline();
    List<Spot> spots =
        wish.spot()
            .map(SymbolPlacer::rings)
            .orElseGet(() -> alongWalls(wish.room().orElseThrow(), outline));
    @Nullable Spot best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Spot spot : spots) {
      double distance = wish.spot().map(spot::distance).orElse(0.0) * PRICE_A_PIXEL;
      if (distance >= least) {
        break;
      }
      Box box = box(outline, spot);
      if (!area.holds(box) || !obstacles.isFree(box.grown(GAP_PIXELS))) {
        continue;
      }
      double price = distance + obstacles.price(box) + roomPrice(wish, spot);
      if (price < least) {
        least = price;
        best = spot;
      }
    }
    if (best == null) {
      return Optional.empty();
    }
    Spot centre = best;
    Box box = box(outline, centre);
    obstacles.take(box);
    Optional<Spot> trueSpot =
        wish.spot().filter(spot -> spot.distance(centre) > TETHER_RADII * radius);
    return Optional.of(new PlacedSymbol(wish.item(), centre, box, radius, trueSpot));
  }

  private Box box(Symbol.Outline outline, Spot centre) {
    return Box.around(
        centre.x(),
        centre.y(),
        2 * radius * outline.halfWidth(),
        2 * radius * outline.halfHeight());
  }

  private double roomPrice(Wish wish, Spot spot) {
    if (wish.room().isEmpty()) {
      return 0;
    }
    RoomGeometry room = wish.room().get();
    boolean wantsInside =
        wish.spot().isEmpty()
            || room.contains(frame.metres(wish.spot().get()))
            || room.distanceToWallsMetres(frame.metres(wish.spot().get())) < 0.05;
    return room.contains(frame.metres(spot)) == wantsInside ? 0 : WRONG_ROOM_PRICE;
  }

  private static List<Spot> rings(Spot centre) {
    List<Spot> spots = new ArrayList<>(List.of(centre));
    for (double ring = RING_PIXELS; ring <= FARTHEST_PIXELS; ring += RING_PIXELS) {
      for (int i = 0; i < DIRECTIONS; i++) {
        double angle = 2 * Math.PI * i / DIRECTIONS;
        spots.add(centre.plus(ring * Math.cos(angle), ring * Math.sin(angle)));
      }
    }
    return spots;
  }

  /** Spots along the inner faces of a room's walls, then over the whole room. */
  private List<Spot> alongWalls(RoomGeometry room, Symbol.Outline outline) {
    List<Spot> corners = frame.at(room.outline());
    List<Spot> spots = new ArrayList<>();
    double across = radius * Math.max(outline.halfWidth(), outline.halfHeight());
    double inset = across + WallLook.OUTER.pixels(frame.scale()) / 2 + 2;
    double step = radius;
    for (int i = 0; i < corners.size(); i++) {
      Spot from = corners.get(i);
      Spot to = corners.get((i + 1) % corners.size());
      double length = from.distance(to);
      for (double way = inset; way <= length - inset && length > 0; way += step) {
        Spot onWall =
            from.along(new Spot((to.x() - from.x()) / length, (to.y() - from.y()) / length), way);
        double dx = (to.y() - from.y()) / length * inset;
        double dy = -(to.x() - from.x()) / length * inset;
        spots.add(onWall.plus(dx, dy));
        spots.add(onWall.plus(-dx, -dy));
      }
    }
    spots.addAll(rings(frame.at(room.centre())));
    return spots;
  }
}
