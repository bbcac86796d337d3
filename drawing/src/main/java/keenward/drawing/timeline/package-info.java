/** Drawings of what happened when. Layout only. */
@NullMarked
package keenward.drawing.timeline;

import org.jspecify.annotations.NullMarked;
