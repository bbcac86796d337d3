/**
 * Walking: the shortest ways round walls and furniture, how long people take on them, and which
 * detectors see them.
 */
@NullMarked
package keenward.core.building.walking;

import org.jspecify.annotations.NullMarked;
