/** What detectors see of each room, and where nobody looks. */
@NullMarked
package keenward.core.building.coverage;

import org.jspecify.annotations.NullMarked;
