package keenward.drawing.floor;

import java.util.List;
import java.util.Optional;
import keenward.core.plan.Zone;
import keenward.drawing.svg.Box;

/**
 * A symbol that has its place.
 *
 * @param item what it stands for
 * @param centre its centre
 * @param box what it covers
 * @param radius its radius
 * @param trueSpot where the thing really is, when the symbol had to stand well clear of it
 */
record PlacedSymbol(Item item, Spot centre, Box box, double radius, Optional<Spot> trueSpot) {

  /**
   * A thing to be drawn.
   *
   * @param kind what sort of thing, as in element ids: device, panel, supply or stair
   * @param name its name
   * @param symbol its symbol
   * @param bearingDegrees where it looks, clockwise from north
   * @param zones the zones it belongs to
   * @param placeKnown whether the plan states the place, or just the room
   * @param words a few words to stand beside it; empty for none
   */
  record Item(
      String kind,
      String name,
      Symbol symbol,
      Optional<Double> bearingDegrees,
      List<Zone> zones,
      boolean placeKnown,
      String words) {}
}
