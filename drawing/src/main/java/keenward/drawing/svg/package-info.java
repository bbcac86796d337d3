/** Pieces of every drawing: SVG text, colours, boxes and the room that words take up. */
@NullMarked
package keenward.drawing.svg;

import org.jspecify.annotations.NullMarked;
