/** Drawings of batteries that are emptied. Layout only. */
@NullMarked
package keenward.drawing.discharge;

import org.jspecify.annotations.NullMarked;
