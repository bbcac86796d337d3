@NullMarked
package keenward.core.building.coverage;

import org.jspecify.annotations.NullMarked;
