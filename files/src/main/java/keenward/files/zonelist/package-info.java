/** A technician's own list of zones, as it comes: words and columns understood, nothing dropped. */
@NullMarked
package keenward.files.zonelist;

import org.jspecify.annotations.NullMarked;
