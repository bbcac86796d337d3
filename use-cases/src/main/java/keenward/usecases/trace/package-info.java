/** Pictures of floors, to trace rooms over. */
@NullMarked
package keenward.usecases.trace;

import org.jspecify.annotations.NullMarked;
