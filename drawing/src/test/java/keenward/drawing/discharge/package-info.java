@NullMarked
package keenward.drawing.discharge;

import org.jspecify.annotations.NullMarked;
