/** Plane geometry of a floor: lines of sight past barriers, and areas joined and cut. */
@NullMarked
package keenward.core.building.plane;

import org.jspecify.annotations.NullMarked;
