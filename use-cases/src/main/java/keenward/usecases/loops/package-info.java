/** Loops of a site and what readings of them mean. */
@NullMarked
package keenward.usecases.loops;

import org.jspecify.annotations.NullMarked;
