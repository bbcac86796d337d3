/** What detectors see: lines of sight past walls, and the areas that follow. */
@NullMarked
package keenward.core.building.coverage;

import org.jspecify.annotations.NullMarked;
