/**
 * Drawings of floors: rooms, walls, openings and devices with symbols of Keenward's own. Layout
 * only, no calculation.
 */
@NullMarked
package keenward.drawing.floor;

import org.jspecify.annotations.NullMarked;
