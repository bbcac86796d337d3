/** A technician's own list of zones, in and out. */
@NullMarked
package keenward.usecases.zonelist;

import org.jspecify.annotations.NullMarked;
