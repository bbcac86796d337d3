/** Invented sites of any size, to try things on. */
@NullMarked
package keenward.usecases.sample;

import org.jspecify.annotations.NullMarked;
