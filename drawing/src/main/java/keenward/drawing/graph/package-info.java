/** What graphs of voltages have in common: their frame, axes and scales. */
@NullMarked
package keenward.drawing.graph;

import org.jspecify.annotations.NullMarked;
