/** Rules on wired loops and their resistors. */
@NullMarked
package keenward.core.rules.loops;

import org.jspecify.annotations.NullMarked;
