/** Drawings that stand on their own, for results that are asked for one at a time. */
@NullMarked
package keenward.usecases.drawn;

import org.jspecify.annotations.NullMarked;
