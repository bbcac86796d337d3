/** The picture of a floor with a measured grid, to trace rooms over. */
@NullMarked
package keenward.drawing.trace;

import org.jspecify.annotations.NullMarked;
