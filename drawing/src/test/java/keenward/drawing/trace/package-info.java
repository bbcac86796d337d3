@NullMarked
package keenward.drawing.trace;

import org.jspecify.annotations.NullMarked;
