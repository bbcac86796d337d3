@NullMarked
package keenward.core.building.plane;

import org.jspecify.annotations.NullMarked;
