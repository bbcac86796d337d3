/**
 * The meaning of a panel description: a deterministic machine whose inputs are keys, time,
 * transmitters heard and power, and whose state is small enough to search.
 */
@NullMarked
package keenward.core.dialogue.machine;

import org.jspecify.annotations.NullMarked;
