/** Rules on capacity: what the panel can hold. */
@NullMarked
package keenward.core.rules.capacity;

import org.jspecify.annotations.NullMarked;
