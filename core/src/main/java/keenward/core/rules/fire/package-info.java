/** Rules on fire and carbon monoxide. */
@NullMarked
package keenward.core.rules.fire;

import org.jspecify.annotations.NullMarked;
