@NullMarked
package keenward.core.electrical.outage;

import org.jspecify.annotations.NullMarked;
