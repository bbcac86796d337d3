@NullMarked
package keenward.core.electrical.loop;

import org.jspecify.annotations.NullMarked;
