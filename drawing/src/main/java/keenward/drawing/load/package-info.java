/** Drawings of loads and batteries. Layout only. */
@NullMarked
package keenward.drawing.load;

import org.jspecify.annotations.NullMarked;
