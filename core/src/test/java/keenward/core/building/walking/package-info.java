@NullMarked
package keenward.core.building.walking;

import org.jspecify.annotations.NullMarked;
