/** Drawings of voltages along cables. */
@NullMarked
package keenward.drawing.voltage;

import org.jspecify.annotations.NullMarked;
